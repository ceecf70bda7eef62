package dev.penstock.cycles;

/** All of one propellant passes a preburner and the turbines, and burns to the end in the chamber. */
public enum StagedCombustion implements Cycle {
    FUEL_RICH("staged-fuel-rich", "Staged combustion, fuel-rich", Side.FUEL),
    OXYGEN_RICH("staged-oxygen-rich", "Staged combustion, oxygen-rich", Side.OXIDIZER);

    private final String id;
    private final String title;
    private final Side rich;

    StagedCombustion(String id, String title, Side rich) {
        this.id = id;
        this.title = title;
        this.rich = rich;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public String summary() {
        return "all the " + rich.key() + " passes a preburner and the turbines on its way to the chamber";
    }
}
