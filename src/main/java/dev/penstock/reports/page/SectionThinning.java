package dev.penstock.reports.page;

import dev.penstock.cooling.design.ChannelSection;
import java.util.ArrayList;
import java.util.List;

/**
 * Leaves out channel sections that interpolation between the others gives back within one per cent, so that a person can
 * read and paste what is left.
 */
public final class SectionThinning {

    private static final double TOLERANCE = 0.01;

    private SectionThinning() {}

    public static List<ChannelSection> of(List<ChannelSection> sections) {
        if (sections.size() < 3) {
            return sections;
        }
        List<ChannelSection> kept = new ArrayList<>();
        kept.add(sections.get(0));
        thin(sections, 0, sections.size() - 1, kept);
        return kept;
    }

    /** Keeps the section between two kept ones that lies farthest off their straight line, and so on in both halves. */
    private static void thin(List<ChannelSection> all, int from, int to, List<ChannelSection> kept) {
        int worst = -1;
        double most = TOLERANCE;
        for (int i = from + 1; i < to; i++) {
            double error = error(all.get(from), all.get(i), all.get(to));
            if (error > most) {
                most = error;
                worst = i;
            }
        }
        if (worst < 0) {
            kept.add(all.get(to));
        } else {
            thin(all, from, worst, kept);
            thin(all, worst, to, kept);
        }
    }

    private static double error(ChannelSection a, ChannelSection s, ChannelSection b) {
        double along = (place(s) - place(a)) / (place(b) - place(a));
        double width = a.width() + along * (b.width() - a.width());
        double height = a.height() + along * (b.height() - a.height());
        return Math.max(Math.abs(width / s.width() - 1), Math.abs(height / s.height() - 1));
    }

    private static double place(ChannelSection s) {
        double distance = Math.log(Math.max(1, s.areaRatio()));
        return s.upstream() ? -distance : distance;
    }
}
