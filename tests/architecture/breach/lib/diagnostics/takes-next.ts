export type { NextConfig } from 'next';
