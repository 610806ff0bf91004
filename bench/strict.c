/*
 * The arithmetic of two questions of the registry over columns of samples, as strict C: the
 * yardstick of bench/monte-carlo.ts, which writes its input and compares its results.
 *
 * Input, all doubles: n, number of columns, the columns; then twice a table: rows, cells a row,
 * and for each cell its nominal value (NaN when missing), how many causes move it, and for each
 * its column, the place it starts from, and its factor. Output: CPU seconds on the standard
 * output, the columns of results in the file named second.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double *data, *end;
static size_t n, at;

static double next(void) { return data[at++]; }

static void load(const char *path) {
  FILE *f = fopen(path, "rb");
  if (!f) exit(2);
  fseek(f, 0, SEEK_END);
  long size = ftell(f);
  rewind(f);
  data = malloc((size_t)size);
  if (!data || fread(data, 1, (size_t)size, f) != (size_t)size) exit(2);
  end = data + size / sizeof(double);
  fclose(f);
}

/* Adds a column turned on by `place`, its end going on at its beginning. */
static void add(double *restrict into, const double *restrict column, size_t place, double factor) {
  size_t first = n - place;
  for (size_t i = 0; i < first; i++) into[i] += factor * column[i + place];
  for (size_t i = first; i < n; i++) into[i] += factor * column[i - first];
}

/* Lays out one cell; returns whether it is there. */
static int cell(double *into, const double *columns) {
  double x = next();
  size_t causes = (size_t)next();
  for (size_t i = 0; i < n; i++) into[i] = x;
  for (size_t c = 0; c < causes; c++) {
    size_t column = (size_t)next(), place = (size_t)next();
    add(into, columns + column * n, place, next());
  }
  return !isnan(x);
}

static double *zeros(void) {
  double *made = calloc(n, sizeof(double));
  if (!made) exit(2);
  return made;
}

/* Mass and centre of gravity: m, x, y, z of each part. */
static void parts(double *out, const double *columns) {
  size_t rows = (size_t)next();
  double *m = zeros(), *x = zeros(), *y = zeros(), *z = zeros();
  double *M = out, *X = out + n, *Y = out + 2 * n, *Z = out + 3 * n, *placed = zeros();
  next();
  for (size_t r = 0; r < rows; r++) {
    int has_m = cell(m, columns), has_x = cell(x, columns);
    int has_y = cell(y, columns), has_z = cell(z, columns);
    if (has_m) for (size_t i = 0; i < n; i++) M[i] += m[i];
    if (!(has_m && has_x && has_y && has_z)) continue;
    for (size_t i = 0; i < n; i++) placed[i] += m[i];
    for (size_t i = 0; i < n; i++) X[i] += m[i] * x[i];
    for (size_t i = 0; i < n; i++) Y[i] += m[i] * y[i];
    for (size_t i = 0; i < n; i++) Z[i] += m[i] * z[i];
  }
  for (size_t i = 0; i < n; i++) {
    X[i] /= placed[i];
    Y[i] /= placed[i];
    Z[i] /= placed[i];
  }
}

/* Install time: count, access, drive of each joint. */
static void joints(double *out, const double *columns) {
  size_t rows = (size_t)next();
  double *count = zeros(), *access = zeros(), *drive = zeros(), *elements = zeros();
  double *T = out, *each = out + n;
  next();
  for (size_t r = 0; r < rows; r++) {
    int has_n = cell(count, columns), has_a = cell(access, columns), has_d = cell(drive, columns);
    if (has_n && has_a && has_d)
      for (size_t i = 0; i < n; i++) T[i] += count[i] * (access[i] + drive[i]);
    if (has_n) for (size_t i = 0; i < n; i++) elements[i] += count[i];
  }
  for (size_t i = 0; i < n; i++) each[i] = T[i] / elements[i];
}

int main(int count, char **names) {
  if (count < 3) return 2;
  load(names[1]);
  n = (size_t)next();
  size_t columns_count = (size_t)next();
  const double *columns = data + at;
  at += columns_count * n;
  size_t start_at = at;
  double *out = NULL, best = INFINITY;
  for (int run = 0; run < 3; run++) {
    free(out);
    out = calloc(6 * n, sizeof(double));
    if (!out) return 2;
    at = start_at;
    clock_t start = clock();
    parts(out, columns);
    joints(out + 4 * n, columns);
    double seconds = (double)(clock() - start) / CLOCKS_PER_SEC;
    if (seconds < best) best = seconds;
  }
  if (data + at != end) return 3;
  FILE *f = fopen(names[2], "wb");
  if (!f || fwrite(out, sizeof(double), 6 * n, f) != 6 * n || fclose(f) != 0) return 2;
  printf("%.6f\n", best);
  return 0;
}
