/** An amount in whole dollars; cents would claim more than an estimate knows. */
export function dollarsAbout(usd: number): string {
  return new Intl.NumberFormat('en-US', {
    style: 'currency',
    currency: 'USD',
    maximumFractionDigits: 0,
  }).format(Math.round(usd));
}
