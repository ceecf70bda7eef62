package dev.penstock.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Two pages word by word, drawings with their labels included; the footer, which names the versions, is left out.
 *
 * @param numbers words of the older page that hold a figure
 * @param moved places where the pages differ, as a sentence each
 */
public record PageComparison(int numbers, List<String> moved) {

    private static final Pattern UNSHOWN = Pattern.compile("(?s)<style>.*?</style>|<footer>.*?</footer>");
    private static final Pattern TAG = Pattern.compile("<[^>]*>");
    private static final int BEFORE = 4;

    public PageComparison {
        moved = List.copyOf(moved);
    }

    /** @return whether nothing differs */
    public boolean same() {
        return moved.isEmpty();
    }

    /**
     * @param older a page
     * @param newer the same page made again
     * @return where they differ
     */
    public static PageComparison of(String older, String newer) {
        List<String> a = words(older);
        List<String> b = words(newer);
        List<String> moved = new ArrayList<>();
        int common = Math.min(a.size(), b.size());
        for (int i = 0; i < common; i++) {
            if (!a.get(i).equals(b.get(i))) {
                moved.add(String.join(" ", a.subList(Math.max(0, i - BEFORE), i)) + " " + a.get(i) + " is now "
                        + b.get(i));
            }
        }
        if (a.size() != b.size()) {
            moved.add("the page had " + a.size() + " words and has " + b.size());
        }
        return new PageComparison(
                (int) a.stream()
                        .filter(w -> w.chars().anyMatch(Character::isDigit))
                        .count(),
                moved);
    }

    private static List<String> words(String page) {
        String text = TAG.matcher(UNSHOWN.matcher(page).replaceAll(" ")).replaceAll(" ");
        return List.of(text.strip().split("\\s+"));
    }
}
