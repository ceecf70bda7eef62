package dev.penstock.cycles;

/** Tanks under pressure push the propellants into the chamber; there is no pump. */
public record PressureFed() implements Cycle {

    @Override
    public String id() {
        return "pressure-fed";
    }

    @Override
    public String title() {
        return "Pressure-fed";
    }

    @Override
    public String summary() {
        return "tank pressure drives the propellants into the chamber";
    }
}
