package dev.penstock.cooling;

import dev.penstock.chamber.ChamberPerformance;
import dev.penstock.chamber.Designs;
import dev.penstock.chamber.ThrustChamber;
import dev.penstock.chamber.design.ChamberDesign;
import dev.penstock.chamber.design.Efficiencies;
import dev.penstock.chamber.design.Injection;
import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasProfiles;
import dev.penstock.cooling.jacket.JacketSolver;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.fluids.state.FluidState;
import java.nio.file.Path;

/** Chambers and jackets that several tests share. */
public final class Cases {

    public static final FluidLibrary FLUIDS = FluidLibrary.open();
    public static final WallLibrary WALLS = WallLibrary.load(Path.of("fluids/walls"));
    private static final SpeciesLibrary SPECIES =
            SpeciesLibrary.open(Path.of("").toAbsolutePath());

    private Cases() {}

    public record Engine(
            String oxidizer,
            String fuel,
            double mixtureRatio,
            double chamberPressure,
            double areaRatio,
            double contraction,
            double characteristicLength,
            double thrust) {

        Reactants reactants() {
            Propellant ox = FLUIDS.propellant(oxidizer);
            Propellant fu = FLUIDS.propellant(fuel);
            return Reactants.ofTanks(ox, fu, mixtureRatio);
        }

        ChamberPerformance chamber() {
            Reactants reactants = reactants();
            ChamberDesign design = new ChamberDesign(
                    chamberPressure,
                    Designs.combustor(contraction, characteristicLength),
                    Designs.bell(areaRatio),
                    ExpansionMode.SHIFTING,
                    Efficiencies.MODELLED);
            return new ThrustChamber(NozzleFlow.of(SPECIES, reactants))
                    .forVacuumThrust(design, Injection.of(reactants), thrust);
        }

        NozzleFlow nozzle() {
            return NozzleFlow.of(SPECIES, reactants());
        }

        HotGasProfile gas() {
            return HotGasProfiles.of(chamber(), reactants());
        }

        /** All of the fuel through the jacket, pumped to a pressure without heating. */
        public JacketCase fuelCooled(double inletPressure, JacketDesign design) {
            ChamberPerformance chamber = chamber();
            return cooled(chamber, fuel, chamber.massFlow() / (1 + mixtureRatio), inletPressure, design);
        }

        JacketCase cooled(
                ChamberPerformance chamber, String coolant, double flow, double inletPressure, JacketDesign design) {
            Propellant propellant = FLUIDS.propellant(coolant);
            FluidState inlet = propellant.fluid().atPressureTemperature(inletPressure, propellant.storageTemperature());
            return new JacketCase(
                    HotGasProfiles.of(chamber, reactants()),
                    propellant,
                    inletPressure,
                    inlet.enthalpy(),
                    flow,
                    design,
                    1);
        }
    }

    public static Engine methane() {
        return new Engine("oxygen", "methane", 3.4, 10e6, 20, 3, 1.0, 500e3);
    }

    static Engine hydrogen() {
        return new Engine("oxygen", "hydrogen", 6, 10e6, 40, 3, 0.8, 1000e3);
    }

    public static JacketSolver solver() {
        return new JacketSolver(WALLS);
    }
}
