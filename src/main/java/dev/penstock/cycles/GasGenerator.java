package dev.penstock.cycles;

/** A small burner feeds the turbines; its gas is dumped through a nozzle of its own. */
public record GasGenerator() implements Cycle {

    @Override
    public String id() {
        return "gas-generator";
    }

    @Override
    public String title() {
        return "Gas generator";
    }

    @Override
    public String summary() {
        return "a small burner drives the turbines and its gas is dumped";
    }
}
