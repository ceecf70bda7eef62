package dev.penstock.reports.slide;

import java.util.Locale;

/** Shapes in which each drawing for an audience is made. */
enum SlideSize {
    WIDE(1920, 1080),
    SQUARE(1080, 1080);

    private final int width;
    private final int height;

    SlideSize(int width, int height) {
        this.width = width;
        this.height = height;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
