/*
 * The functions of CoolProp's C interface that Penstock calls, over fluids in closed form: an incompressible liquid "H2O"
 * and the ideal gases "IdealNitrogen" and "IdealHelium". Every state belongs to a handle; handles are given out and freed
 * under a lock, and a freed one is refused. As CoolProp does, a call that succeeds leaves the error number alone.
 */
#include <pthread.h>
#include <stdio.h>
#include <string.h>

#define MOST 4096
#define LIQUID_DENSITY 997.05
#define LIQUID_HEAT 4180.0

struct state { int used, known, gas; double r, cp, p, t; };

static struct state states[MOST];
static long live = 0, given = 0;
static pthread_mutex_t lock = PTHREAD_MUTEX_INITIALIZER;

static const char *pairs[] = {"PT_INPUTS", "DmassT_INPUTS", "HmassP_INPUTS", 0};
static const char *parameters[] = {"T", "P", "Dmass", "Hmass", "Cpmass", 0};

static long find(const char **names, const char *name) {
  for (long i = 0; names[i]; i++) if (!strcmp(names[i], name)) return 100 + 7 * i;
  return -1;
}

long get_input_pair_index(const char *name) { return find(pairs, name); }
long get_param_index(const char *name) { return find(parameters, name); }
long live_handles(void) { return live; }

static void fail(long *error, char *message, long size, const char *what, const char *which) {
  *error = 1;
  snprintf(message, size, "%s %s", what, which);
}

static struct state *at(long handle, long *error, char *message, long size) {
  if (handle < 1 || handle >= MOST || !states[handle].used) { fail(error, message, size, "no such", "handle"); return 0; }
  return &states[handle];
}

long AbstractState_factory(const char *backend, const char *fluid, long *error, char *message, const long size) {
  struct state made = {1, 0, 0, 0, LIQUID_HEAT, 0, 0};
  if (strcmp(backend, "HEOS")) { fail(error, message, size, "unknown backend", backend); return -1; }
  if (!strcmp(fluid, "IdealNitrogen")) { made.gas = 1; made.r = 296.8; made.cp = 3.5 * made.r; }
  else if (!strcmp(fluid, "IdealHelium")) { made.gas = 1; made.r = 2077.1; made.cp = 2.5 * made.r; }
  else if (strcmp(fluid, "H2O")) { fail(error, message, size, "unknown fluid", fluid); return -1; }
  pthread_mutex_lock(&lock);
  long handle = given + 1 < MOST ? ++given : -1;
  if (handle > 0) { states[handle] = made; live++; }
  pthread_mutex_unlock(&lock);
  if (handle < 0) fail(error, message, size, "too many", "handles");
  return handle;
}

void AbstractState_free(const long handle, long *error, char *message, const long size) {
  pthread_mutex_lock(&lock);
  struct state *s = at(handle, error, message, size);
  if (s) { s->used = 0; live--; }
  pthread_mutex_unlock(&lock);
}

void AbstractState_unspecify_phase(const long handle, long *error, char *message, const long size) {
  at(handle, error, message, size);
}

void AbstractState_update(const long handle, const long pair, const double a, const double b, long *error, char *message,
                          const long size) {
  struct state *s = at(handle, error, message, size);
  if (!s) return;
  double p, t;
  if (pair == find(pairs, "PT_INPUTS")) { p = a; t = b; }
  else if (pair == find(pairs, "DmassT_INPUTS") && s->gas) { p = a * s->r * b; t = b; }
  else if (pair == find(pairs, "HmassP_INPUTS")) { p = b; t = a / s->cp; }
  else { fail(error, message, size, "unknown", "pair of inputs"); return; }
  if (!(t > 0)) { fail(error, message, size, "temperature below", "zero"); return; }
  s->p = p;
  s->t = t;
  s->known = 1;
}

double AbstractState_keyed_output(const long handle, const long key, long *error, char *message, const long size) {
  struct state *s = at(handle, error, message, size);
  if (!s) return 1e308 * 10;
  if (!s->known) { fail(error, message, size, "no state", "yet"); return 1e308 * 10; }
  if (key == find(parameters, "T")) return s->t;
  if (key == find(parameters, "P")) return s->p;
  if (key == find(parameters, "Dmass")) return s->gas ? s->p / (s->r * s->t) : LIQUID_DENSITY;
  if (key == find(parameters, "Hmass")) return s->cp * s->t;
  if (key == find(parameters, "Cpmass")) return s->cp;
  fail(error, message, size, "unknown", "output");
  return 1e308 * 10;
}

double AbstractState_first_partial_deriv(const long handle, const long of, const long by, const long constant, long *error,
                                         char *message, const long size) {
  struct state *s = at(handle, error, message, size);
  if (s && s->gas && of == find(parameters, "P") && by == find(parameters, "Dmass") && constant == find(parameters, "T"))
    return s->r * s->t;
  if (s) fail(error, message, size, "unknown", "derivative");
  return 1e308 * 10;
}
