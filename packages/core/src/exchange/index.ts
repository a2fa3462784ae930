export { linkOf, readLink, type LinkReading } from './link.ts';
