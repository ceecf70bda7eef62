package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Dry mass built up from published relations, line by line.
 *
 * @param interstage whether it carries another stage, on an interstage
 * @param fairing mass of the payload fairing that this stage carries until it is dropped (kg); zero for none
 * @param growthMargin growth as a fraction of the sum of the lines (-)
 */
public record RelationsDryMass(boolean interstage, double fairing, double growthMargin) implements DryMassModel {

    /** Interstage length over diameter: room for the nozzle above. Common practice, no source. */
    private static final double INTERSTAGE_LENGTH = 1.0;

    /** Length of skirts and intertank shell over diameter: common practice, no source. */
    private static final double SHELL_LENGTH = 1.0;

    public RelationsDryMass {
        Require.notNegative("dry mass", "fairing (kg)", fairing);
        Require.within("dry mass", "growth margin (-)", growthMargin, 0, 2);
    }

    @Override
    public MassTable estimate(StageContents stage) {
        List<MassLine> lines = new ArrayList<>(12);
        lines.add(ScalingRelations.tank(
                "oxidizer tank", stage.engine().oxidizer(), stage.oxidizerTank().volume()));
        lines.add(ScalingRelations.tank(
                "fuel tank", stage.engine().fuel(), stage.fuelTank().volume()));
        add(
                lines,
                ScalingRelations.insulation(
                        "oxidizer tank insulation",
                        stage.engine().oxidizer(),
                        stage.oxidizerTank().area()));
        add(
                lines,
                ScalingRelations.insulation(
                        "fuel tank insulation",
                        stage.engine().fuel(),
                        stage.fuelTank().area()));
        lines.add(new MassLine(
                "engines", stage.engines() * stage.engine().mass(), 0.2, "mass of one engine times their number"));
        lines.add(ScalingRelations.thrustStructure(stage.vacuumThrust()));
        add(
                lines,
                ScalingRelations.gimbals(
                        stage.engines(),
                        stage.engine().vacuumThrust(),
                        stage.engine().chamberPressure()));
        lines.add(ScalingRelations.avionics(stage.startMass()));
        lines.add(ScalingRelations.wiring(stage.startMass(), stage.length()));
        double ring = Math.PI * stage.diameter() * stage.diameter();
        lines.add(ScalingRelations.shell("skirts and intertank", SHELL_LENGTH * ring));
        if (interstage) {
            lines.add(ScalingRelations.shell("interstage", INTERSTAGE_LENGTH * ring));
        }
        add(lines, new MassLine("payload fairing", fairing, 0.2, "given"));
        return new MassTable(lines, growthMargin);
    }

    private static void add(List<MassLine> lines, MassLine line) {
        if (line.mass() > 0) {
            lines.add(line);
        }
    }
}
