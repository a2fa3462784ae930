import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { apiDescription } from '../src/index.ts';
import { said, served } from './served.ts';

describe('the description of the API', () => {
  it('in docs/openapi.json is what the code gives, and what the server hands out', async () => {
    const { send } = await served();
    const written = JSON.parse(readFileSync(new URL('../../../docs/openapi.json', import.meta.url), 'utf8')) as object;
    expect(written).toEqual(JSON.parse(JSON.stringify(apiDescription())));
    expect(await said(send('GET', '/api/openapi.json'))).toEqual(written);
  });
});
