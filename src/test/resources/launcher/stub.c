/* Stands for java, mvn, python and powershell: writes down how it was called, prints STUB_<name> and ends with STUB_<name>_EXIT. */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int main(int count, char **words) {
    char name[64], key[96];
    const char *file = words[0], *c;
    for (c = words[0]; *c; c++) {
        if (*c == '\\' || *c == '/') file = c + 1;
    }
    strncpy(name, file, sizeof name - 1);
    name[sizeof name - 1] = 0;
    char *dot = strrchr(name, '.');
    if (dot) *dot = 0;
    FILE *calls = fopen(getenv("STUB_CALLS"), "a");
    if (!calls) return 99;
    fprintf(calls, "%s", name);
    for (int i = 1; i < count; i++) fprintf(calls, "|%s", words[i]);
    fprintf(calls, "\n");
    fclose(calls);
    snprintf(key, sizeof key, "STUB_%s", name);
    if (getenv(key)) printf("%s\n", getenv(key));
    if (count > 1 && !strcmp(words[1], "-version")) return 0;
    snprintf(key, sizeof key, "STUB_%s_EXIT", name);
    return getenv(key) ? atoi(getenv(key)) : 0;
}
