package dev.penstock.combustion.species;

import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * Standard-state properties of many species at one temperature, laid out for speed: one row per coefficient and
 * temperature interval. Beyond the ends of a fit cp is held constant. Where two intervals of a fit meet, the upper one is
 * moved to join the lower. Not thread-safe.
 */
public final class ThermoTable {

    private final int size;
    private final double[] breaks;
    private final double[][][] rows;
    private int current = -1;
    private double evaluatedAt = -1;
    private double evaluatedPressure;
    /** b/R and a/R of each species (K/Pa and K²/Pa); null for ideal gases. */
    private final double[] covolume;

    private final double[] attraction;

    /** cp/R (-). */
    public final double[] cp;
    /** h/(R T) (-). */
    public final double[] h;
    /** s/R at 1 bar (-). */
    public final double[] s;

    /** @param other a table to share the coefficients of; its state is not copied */
    public ThermoTable(ThermoTable other) {
        size = other.size;
        breaks = other.breaks;
        rows = other.rows;
        cp = new double[size];
        h = new double[size];
        s = new double[size];
        covolume = other.covolume;
        attraction = other.attraction;
    }

    /**
     * @param species species
     * @param dense whether gases take up room by their {@link SecondVirial} instead of being ideal
     */
    public ThermoTable(List<Species> species, boolean dense) {
        size = species.size();
        cp = new double[size];
        h = new double[size];
        s = new double[size];
        covolume = dense ? coefficients(species, SecondVirial::covolume) : null;
        attraction = dense ? coefficients(species, SecondVirial::attraction) : null;
        TreeSet<Double> edges = new TreeSet<>();
        for (Species one : species) {
            edges.add(one.minimumTemperature());
            one.intervals().forEach(i -> edges.add(i.high()));
        }
        breaks = edges.stream().mapToDouble(Double::doubleValue).toArray();
        rows = new double[breaks.length + 1][7][size];
        for (int j = 0; j < size; j++) {
            List<ThermoInterval> pieces = extended(species.get(j));
            for (int b = 0; b <= breaks.length; b++) {
                double inside = b == 0
                        ? breaks[0] / 2
                        : b == breaks.length ? breaks[b - 1] * 2 : (breaks[b - 1] + breaks[b]) / 2;
                fill(
                        rows[b],
                        j,
                        pieces.stream()
                                .filter(p -> inside <= p.high())
                                .findFirst()
                                .orElseThrow());
            }
        }
    }

    private static List<ThermoInterval> extended(Species species) {
        List<ThermoInterval> own = new ArrayList<>();
        for (ThermoInterval next : species.intervals()) {
            own.add(own.isEmpty() ? next : next.joinedTo(own.get(own.size() - 1), next.low()));
        }
        ThermoInterval first = own.get(0);
        ThermoInterval last = own.get(own.size() - 1);
        own.add(0, first.heldBeyond(first.low(), 0, first.low()));
        own.add(last.heldBeyond(last.high(), last.high(), Double.MAX_VALUE));
        return own;
    }

    private static void fill(double[][] row, int j, ThermoInterval p) {
        row[0][j] = p.a1();
        row[1][j] = p.a2();
        row[2][j] = p.a3();
        row[3][j] = p.a4();
        row[4][j] = p.a5();
        row[5][j] = p.a6();
        row[6][j] = p.a7();
    }

    private static double[] coefficients(List<Species> species, ToDoubleFunction<SecondVirial> part) {
        return species.stream()
                .mapToDouble(s -> s.secondVirial().map(part::applyAsDouble).orElse(0.0) / Constants.MOLAR_GAS_CONSTANT)
                .toArray();
    }

    /** @return whether pressure matters */
    public boolean dense() {
        return covolume != null;
    }

    /**
     * Properties at a pressure, which matters where gases are not ideal. cp, h and s of gases are then those of the dense gas, the
     * entropy and the chemical potential h − s less what an ideal gas of 1 bar has more of at that pressure.
     *
     * @param t temperature (K), above zero
     * @param p pressure (Pa)
     */
    public void evaluate(double t, double p) {
        if (covolume == null) {
            evaluate(t);
            return;
        }
        if (t == evaluatedAt && p == evaluatedPressure) {
            return;
        }
        evaluate(t);
        evaluatedPressure = p;
        double[] room = covolume;
        double[] pull = attraction;
        double perRoom = p / t;
        double perPull = perRoom / t;
        for (int j = 0; j < size; j++) {
            double a = perPull * pull[j];
            cp[j] += 2 * a;
            h[j] += perRoom * room[j] - 2 * a;
            s[j] -= a;
        }
    }

    /**
     * By how much the first species exceed ideal gases, where gases take up room.
     *
     * @param phi receives p B/(R T), that of the chemical potential over R T (-)
     * @param psi receives p (B − T dB/dT)/(R T), {@link #crowdingHeat} (-)
     * @param gases number of species
     */
    public void crowding(double[] phi, double[] psi, int gases) {
        double t = evaluatedAt;
        double perRoom = evaluatedPressure / t;
        double[] room = covolume;
        double[] pull = attraction;
        for (int j = 0; j < gases; j++) {
            double a = pull[j] / t;
            phi[j] = perRoom * (room[j] - a);
            psi[j] = perRoom * (room[j] - 2 * a);
        }
    }

    /**
     * @param gasMoles moles of all gases (mol/kg)
     * @param moles moles of each species, gases first (mol/kg)
     * @param gases number of gases
     * @return p v/(R T): the moles of gas and what they take up beyond ideal ones (mol/kg)
     */
    public double volume(double gasMoles, double[] moles, int gases) {
        double[] room = covolume;
        if (room == null) {
            return gasMoles;
        }
        double[] pull = attraction;
        double t = evaluatedAt;
        double perRoom = evaluatedPressure / t;
        double sum = gasMoles;
        for (int j = 0; j < gases; j++) {
            sum += moles[j] * (perRoom * (room[j] - pull[j] / t));
        }
        return sum;
    }

    /**
     * @param j a species, where gases take up room
     * @return p (B − T dB/dT)/(R T), by which its enthalpy over R T exceeds that of an ideal gas (-)
     */
    public double crowdingHeat(int j) {
        return evaluatedPressure / evaluatedAt * (covolume[j] - 2 * attraction[j] / evaluatedAt);
    }

    /**
     * Properties of ideal gases.
     *
     * @param t temperature (K), above zero
     */
    public void evaluate(double t) {
        if (t == evaluatedAt && evaluatedPressure == 0) {
            return;
        }
        evaluatedAt = t;
        evaluatedPressure = 0;
        select(t);
        double[][] c = rows[current];
        double[] c1 = c[0];
        double[] c2 = c[1];
        double[] c3 = c[2];
        double[] c4 = c[3];
        double[] c5 = c[4];
        double[] c6 = c[5];
        double[] c7 = c[6];
        double logT = Math.log(t);
        double inverse = 1 / t;
        double t2 = t * t;
        double t3 = t2 * t;
        double t4 = t2 * t2;
        double half = t / 2;
        double half2 = t2 / 2;
        double third2 = t2 / 3;
        double third3 = t3 / 3;
        double fourth3 = t3 / 4;
        double fourth4 = t4 / 4;
        double fifth4 = t4 / 5;
        for (int j = 0; j < size; j++) {
            cp[j] = c1[j] + c2[j] * t + c3[j] * t2 + c4[j] * t3 + c5[j] * t4;
            h[j] = c1[j] + c2[j] * half + c3[j] * third2 + c4[j] * fourth3 + c5[j] * fifth4 + c6[j] * inverse;
            s[j] = c1[j] * logT + c2[j] * t + c3[j] * half2 + c4[j] * third3 + c5[j] * fourth4 + c7[j];
        }
    }

    private void select(double t) {
        if (current >= 0
                && (current == 0 || t >= breaks[current - 1])
                && (current == breaks.length || t < breaks[current])) {
            return;
        }
        int b = 0;
        while (b < breaks.length && t >= breaks[b]) {
            b++;
        }
        current = b;
    }
}
