/** The mark of the site as the data of a path, in a square of 32: a closed loop of rubber, wound by two turns. */
export const skein = 'M3 16C3 9 7.5 9 11 16S17.5 23 21 16S29 9 29 16S24.5 23 21 16S14.5 9 11 16S3 23 3 16Z';
