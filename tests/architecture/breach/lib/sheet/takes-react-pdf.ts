export { Document } from '@react-pdf/renderer';
