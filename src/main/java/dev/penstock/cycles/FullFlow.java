package dev.penstock.cycles;

/** Both propellants pass a preburner: fuel-rich gas drives the fuel pump, oxidizer-rich gas the oxidizer pump. */
public record FullFlow() implements Cycle {

    @Override
    public String id() {
        return "full-flow";
    }

    @Override
    public String title() {
        return "Full-flow staged combustion";
    }

    @Override
    public String summary() {
        return "two preburners, one fuel-rich and one oxidizer-rich, pass all propellant through the turbines";
    }
}
