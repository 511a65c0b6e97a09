import { z } from 'zod';
import { NewPlace, Place, PlaceAir, PlaceChange } from '../place.ts';
import type { Route } from '../route.ts';
import { ById } from './params.ts';

export const placeRoutes = {
  listPlaces: {
    method: 'GET',
    path: '/api/v1/places',
    summary: 'All places with the air there now',
    status: 200,
    reply: z.array(Place.extend({ air: PlaceAir })),
  },
  createPlace: {
    method: 'POST',
    path: '/api/v1/places',
    summary: 'Make a place',
    body: NewPlace,
    status: 201,
    reply: Place,
  },
  readPlace: {
    method: 'GET',
    path: '/api/v1/places/:id',
    summary: 'One place with the air there now',
    params: ById,
    status: 200,
    reply: Place.extend({ air: PlaceAir }),
  },
  changePlace: {
    method: 'PATCH',
    path: '/api/v1/places/:id',
    summary: 'Rename a place, or say better how large it is, how it stands and what it takes',
    params: ById,
    body: PlaceChange,
    status: 200,
    reply: Place,
  },
} as const satisfies Record<string, Route>;
