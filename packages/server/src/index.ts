export { openServer, type Server, type ServerOptions } from './openServer.ts';
export { apiDescription } from './apiDescription.ts';
