package dev.penstock.reports.slide;

import java.awt.geom.Rectangle2D;

/**
 * A drawing for an audience.
 *
 * @param key part of its file name
 * @param title what it is about
 * @param sentence the one thought to take away
 * @param painter draws it into the room that is left
 */
public record Slide(String key, String title, String sentence, Painter painter) {

    /** Draws into a part of a sheet. */
    @FunctionalInterface
    public interface Painter {

        /**
         * @param pencil draws
         * @param room where
         */
        void draw(Pencil pencil, Rectangle2D room);
    }
}
