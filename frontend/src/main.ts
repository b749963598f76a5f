import { DRAWS } from './charts/all';
import { define } from './kit/element';

DRAWS.forEach(([name, draw]) => define(name, draw));
