import { z } from 'zod';
import {
  MadeMqttLogin,
  MqttAccess,
  MqttLoginChange,
  MqttLoginName,
  MqttModeChange,
  NewMqttLogin,
} from '../mqtt-access.ts';
import type { Route } from '../route.ts';

const ByName = z.strictObject({ id: MqttLoginName });

export const mqttAccessRoutes = {
  readMqttAccess: {
    method: 'GET',
    path: '/api/v1/mqtt-access',
    summary: 'Who may publish over MQTT, and which sensors would fall silent if it were closed',
    role: 'own',
    status: 200,
    reply: MqttAccess,
  },
  changeMqttMode: {
    method: 'PATCH',
    path: '/api/v1/mqtt-access',
    summary: 'Open the broker, pair the sensors, or close it',
    role: 'own',
    body: MqttModeChange,
    status: 200,
    reply: MqttAccess,
  },
  createMqttLogin: {
    method: 'POST',
    path: '/api/v1/mqtt-logins',
    summary: 'Make a name and a password for the broker; the password is told once',
    role: 'own',
    body: NewMqttLogin,
    status: 201,
    reply: MadeMqttLogin,
  },
  changeMqttLogin: {
    method: 'PATCH',
    path: '/api/v1/mqtt-logins/:id',
    summary: 'Change which sensors a node may publish as',
    role: 'own',
    params: ByName,
    body: MqttLoginChange,
    status: 200,
    reply: MqttAccess,
  },
  removeMqttLogin: {
    method: 'DELETE',
    path: '/api/v1/mqtt-logins/:id',
    summary: 'Take a name and its password away, and end its connections',
    role: 'own',
    params: ByName,
    status: 200,
    reply: MqttAccess,
  },
} as const satisfies Record<string, Route>;
