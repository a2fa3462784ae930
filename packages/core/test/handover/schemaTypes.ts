export type { Product, WithContext } from 'schema-dts';
