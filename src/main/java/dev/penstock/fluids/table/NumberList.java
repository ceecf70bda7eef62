package dev.penstock.fluids.table;

import java.util.Arrays;

/** A list of numbers that grows, in which a table is written down. */
final class NumberList {

    private double[] numbers = new double[1 << 12];
    private int count;

    void add(double number) {
        room(1);
        numbers[count++] = number;
    }

    void addAll(double... more) {
        room(more.length);
        System.arraycopy(more, 0, numbers, count, more.length);
        count += more.length;
    }

    /** Adds the length of a list, then the list. */
    void addList(double... list) {
        add(list.length);
        addAll(list);
    }

    private void room(int more) {
        if (count + more > numbers.length) {
            numbers = Arrays.copyOf(numbers, Math.max(count + more, 2 * numbers.length));
        }
    }

    double[] toArray() {
        return Arrays.copyOf(numbers, count);
    }
}
