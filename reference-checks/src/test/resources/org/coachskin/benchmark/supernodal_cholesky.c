/*
 * Times CHOLMOD (Debian: libsuitesparse-dev) on a matrix and an order of ours.
 *
 *   supernodal_cholesky MATRIX.mtx ORDER.txt TURNS given|metis
 *
 * Prints the median and the least time of a numeric factorisation and of a solution in ms, entries
 * of L, and the BLAS in use.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <suitesparse/cholmod.h>
#include <time.h>

extern void dgemm_(void);

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return t.tv_sec * 1e3 + t.tv_nsec / 1e6;
}

static int compare(const void *a, const void *b) {
    double x = *(const double *) a, y = *(const double *) b;
    return x < y ? -1 : x > y;
}

int main(int count, char **word) {
    if (count != 5) return 2;
    cholmod_common c;
    cholmod_start(&c);
    FILE *file = fopen(word[1], "r");
    cholmod_sparse *a = cholmod_read_sparse(file, &c);
    fclose(file);
    int n = (int) a->nrow, turns = atoi(word[3]), metis = !strcmp(word[4], "metis");
    int *order = malloc(n * sizeof(int));
    file = fopen(word[2], "r");
    for (int i = 0; i < n; i++) if (fscanf(file, "%d", order + i) != 1) return 3;
    fclose(file);
    c.supernodal = CHOLMOD_SUPERNODAL;
    c.nmethods = 1;
    c.method[0].ordering = metis ? CHOLMOD_METIS : CHOLMOD_GIVEN;
    cholmod_factor *l = cholmod_analyze_p(a, metis ? NULL : order, NULL, 0, &c);
    double *factor = malloc(turns * sizeof(double)), *solve = malloc(turns * sizeof(double));
    cholmod_dense *b = cholmod_ones(n, 1, a->xtype, &c);
    for (int i = 0; i < turns; i++) {
        double start = now();
        cholmod_factorize(a, l, &c);
        factor[i] = now() - start;
        start = now();
        cholmod_dense *x = cholmod_solve(CHOLMOD_A, l, b, &c);
        solve[i] = now() - start;
        cholmod_free_dense(&x, &c);
    }
    if (c.status != CHOLMOD_OK) return 4;
    qsort(factor, turns, sizeof(double), compare);
    qsort(solve, turns, sizeof(double), compare);
    Dl_info blas;
    dladdr((void *) dgemm_, &blas);
    printf("%f %f %f %f %.0f %s\n", factor[turns / 2], factor[0], solve[turns / 2], solve[0], c.lnz,
           blas.dli_fname);
    return 0;
}
