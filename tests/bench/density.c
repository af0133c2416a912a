/* Density of ethanol-water by OIML R 22: the same sum as core/liquid/ethanol-water.ts, written out in the
   same way, so that neither side has an advantage. Compiled and run by density.ts. */
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define COEFFICIENTS 54
static double k[COEFFICIENTS];

static double density(double p, double dt)
{
    const double r0 = ((((((((((k[11] * p + k[10]) * p + k[9]) * p + k[8]) * p + k[7]) * p + k[6]) * p + k[5]) * p + k[4]) * p + k[3]) * p + k[2]) * p + k[1]) * p + k[0];
    const double r1 = ((((((((((k[23] * p + k[22]) * p + k[21]) * p + k[20]) * p + k[19]) * p + k[18]) * p + k[17]) * p + k[16]) * p + k[15]) * p + k[14]) * p + k[13]) * p + k[12];
    const double r2 = (((((((((k[34] * p + k[33]) * p + k[32]) * p + k[31]) * p + k[30]) * p + k[29]) * p + k[28]) * p + k[27]) * p + k[26]) * p + k[25]) * p + k[24];
    const double r3 = ((((((((k[44] * p + k[43]) * p + k[42]) * p + k[41]) * p + k[40]) * p + k[39]) * p + k[38]) * p + k[37]) * p + k[36]) * p + k[35];
    const double r4 = (((k[49] * p + k[48]) * p + k[47]) * p + k[46]) * p + k[45];
    const double r5 = (k[52] * p + k[51]) * p + k[50];
    const double r6 = k[53];
    return (((((r6 * dt + r5) * dt + r4) * dt + r3) * dt + r2) * dt + r1) * dt + r0;
}

/* stdin: the coefficients, by powers of t − 20, then of p. Arguments: evaluations, rounds. Out: best seconds, checksum. */
int main(int argc, char **argv)
{
    if (argc != 3) return 2;
    const long evaluations = atol(argv[1]);
    const int rounds = atoi(argv[2]);
    for (int i = 0; i < COEFFICIENTS; i++)
        if (scanf("%lf", &k[i]) != 1) return 2;
    double best = 1e9, sum = 0;
    for (int round = 0; round < rounds; round++) {
        struct timespec a, b;
        sum = 0;
        clock_gettime(CLOCK_MONOTONIC, &a);
        for (long i = 0; i < evaluations; i++)
            sum += density((double)(i % 1001) / 1000, (double)(i % 61) - 40);
        clock_gettime(CLOCK_MONOTONIC, &b);
        const double seconds = (double)(b.tv_sec - a.tv_sec) + 1e-9 * (double)(b.tv_nsec - a.tv_nsec);
        if (seconds < best) best = seconds;
    }
    printf("%.9f %.17g\n", best, sum);
    return 0;
}
