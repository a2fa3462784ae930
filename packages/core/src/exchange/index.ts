export { linkOf, readLink, type LinkReading } from './link.ts';
export { readReplyLink, readRequestLink, replyLinkOf, requestLinkOf } from './measuring.ts';
export { printedLinkOf, readPrinted, type Printed } from './printed.ts';
export { longestQrText, qrOf, type QrSquares } from './qr.ts';
export * from './rows/index.ts';
