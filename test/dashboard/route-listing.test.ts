import { describe, expect, it } from 'vitest';
import { listRoutes } from '../../dashboard/api-page/route-listing.ts';
import { apiPage } from '../../dashboard/words/en/api-page.ts';

describe('the listing of routes', () => {
  it('names what a route takes, with type, unit and whether it must be there', () => {
    const document = {
      openapi: '3.1.0',
      components: { schemas: { Name: { type: 'string', description: 'as it is called' } } },
      paths: {
        '/api/v1/places': {
          post: {
            summary: 'Make a place',
            responses: {},
            requestBody: {
              content: {
                'application/json': {
                  schema: {
                    type: 'object',
                    required: ['name'],
                    properties: {
                      name: { $ref: '#/components/schemas/Name' },
                      volumeM3: { anyOf: [{ type: 'number' }, { type: 'null' }], unit: 'm³' },
                    },
                  },
                },
              },
            },
          },
        },
      },
    };
    const [route] = listRoutes(document, apiPage);
    expect(route).toEqual({
      method: 'POST',
      path: '/api/v1/places',
      summary: 'Make a place',
      takes: [
        { name: 'name', type: 'string', must: true, about: 'as it is called' },
        { name: 'volumeM3', type: 'number or null, m³', must: false, about: '' },
      ],
    });
  });

  it('is empty for what is no description, instead of failing', () => {
    expect(listRoutes(null, apiPage)).toEqual([]);
    expect(listRoutes({ paths: { '/x': { get: 'soon' } } }, apiPage)).toEqual([]);
  });
});
