package dev.penstock.input;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Edit distance between two names, to suggest the ones that were meant. */
public final class Spelling {

    private Spelling() {}

    /**
     * @param name a name that nothing has
     * @param known names that there are
     * @param most most names to give
     * @return those near enough to be what was meant, the nearest first
     */
    public static List<String> near(String name, Collection<String> known, int most) {
        return known.stream()
                .distinct()
                .filter(k -> distance(k, name) <= 2 + name.length() / 3)
                .sorted(Comparator.<String>comparingInt(k -> distance(k, name))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(most)
                .toList();
    }

    /**
     * Levenshtein distance: fewest insertions, deletions and replacements of one letter.
     *
     * @param a one name
     * @param b another name
     * @return number of edits
     */
    public static int distance(String a, String b) {
        int[] previous = new int[b.length() + 1];
        int[] current = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replace = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(replace, 1 + Math.min(previous[j], current[j - 1]));
            }
            int[] swap = previous;
            previous = current;
            current = swap;
        }
        return previous[b.length()];
    }
}
