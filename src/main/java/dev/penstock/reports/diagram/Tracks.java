package dev.penstock.reports.diagram;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gives the lines that change sides between two layers levels of their own, so that none runs on top of another. */
final class Tracks {

    private static final double CLEAR = 8;

    private Tracks() {}

    /**
     * @param links lines between two neighbouring layers; their track is set, 0 at the top
     * @return number of tracks
     */
    static int assign(List<Link> links) {
        List<Link> waiting = new ArrayList<>(links.stream().filter(Link::bends).toList());
        waiting.sort(Comparator.comparingDouble(l -> Math.min(l.fromX, l.toX)));
        int tracks = 0;
        while (!waiting.isEmpty()) {
            List<Link> level = new ArrayList<>();
            for (Link link : List.copyOf(waiting)) {
                boolean free = waiting.stream().noneMatch(other -> other != link && mustBeAbove(other, link));
                if (free && level.stream().noneMatch(other -> touch(other, link))) {
                    level.add(link);
                }
            }
            if (level.isEmpty()) {
                level.add(waiting.get(0));
            }
            int track = tracks++;
            level.forEach(link -> link.track = track);
            waiting.removeAll(level);
        }
        return tracks;
    }

    /** Whether the level of {@code a} must be higher, since it leaves from above where {@code b} arrives below. */
    private static boolean mustBeAbove(Link a, Link b) {
        return Math.abs(a.fromX - b.toX) < CLEAR;
    }

    private static boolean touch(Link a, Link b) {
        return Math.min(a.fromX, a.toX) < Math.max(b.fromX, b.toX) + CLEAR
                && Math.min(b.fromX, b.toX) < Math.max(a.fromX, a.toX) + CLEAR;
    }
}
