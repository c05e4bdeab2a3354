export { nothing } from 'keepworth-package-that-does-not-exist';
