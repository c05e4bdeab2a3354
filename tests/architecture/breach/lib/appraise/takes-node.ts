export { join } from 'path';
