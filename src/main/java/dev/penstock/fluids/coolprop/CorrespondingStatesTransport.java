package dev.penstock.fluids.coolprop;

import dev.penstock.fluids.property.TemperatureFunction;
import dev.penstock.fluids.property.TransportModel;
import dev.penstock.fluids.state.Phase;
import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.function.Supplier;

/**
 * Viscosity and conductivity of a fluid from those of a similar one at the same reduced temperature and density, the
 * dilute gas from its own correlations [huber-ely-1992]:
 *
 * <pre>
 * μ(T, ρ) = μg(T) + Fμ [μ'(T', ρ') - μ'(T', 0)] [1 - c max(0, ρ/ρc - 1)],   Fμ = √(f M/M') h^(-2/3)
 * k(T, ρ) = kg(T) + Fk [k'(T', ρ') - k'(T', 0)],                            Fk = √(f M'/M) h^(-2/3)
 * T' = T/f, ρ' = ρ ρc'/ρc (by mass),   f = Tc/Tc',   h = ρc'/ρc (by mole)
 * </pre>
 *
 * <p>Primes mark the similar fluid, whose temperature is kept above its triple point; c is fitted to the fluid's liquid viscosity. Uncertainty: see the data file.
 */
public final class CorrespondingStatesTransport implements TransportModel {

    static final ModelCard CARD = new ModelCard(
            "fluids.corresponding-states-transport",
            "Transport properties by corresponding states with a similar fluid",
            "mu = mu_gas(T) + F [mu'(T', rho') - mu'(T', 0)] [1 - c max(0, rho/rhoc - 1)], k likewise with c = 0",
            "range of both fluids' equations of state",
            "stated in the fluid's data file",
            List.of("huber-ely-1992"));

    private static final double DILUTE = 1e-6;

    /**
     * What the data file states.
     *
     * @param fluid CoolProp's name of the fluid itself
     * @param similar CoolProp's name of the similar fluid
     * @param gasViscosity dilute-gas viscosity (Pa·s)
     * @param gasConductivity dilute-gas conductivity (W/(m·K))
     * @param liquidFactor c above (-)
     */
    public record Data(
            String fluid,
            String similar,
            TemperatureFunction gasViscosity,
            TemperatureFunction gasConductivity,
            double liquidFactor) {}

    private record Scales(
            double temperature,
            double density,
            double critical,
            double viscosity,
            double conductivity,
            double lowest) {}

    private final Data data;
    private final Supplier<CoolPropLibrary> coolProp;
    private final ThreadLocal<Similar> similar;
    private volatile Scales scales;

    public CorrespondingStatesTransport(Supplier<CoolPropLibrary> coolProp, Data data) {
        this.data = data;
        this.coolProp = coolProp;
        this.similar = ThreadLocal.withInitial(() -> new Similar(open(data.similar), open(data.similar)));
    }

    /**
     * The similar fluid at a mapped state and its dilute gas. Viscosity and conductivity of a state are asked one after the other, and
     * moving there costs far more than reading: both stay where they are.
     */
    private static final class Similar {

        private final CoolPropHandle dense;
        private final CoolPropHandle dilute;
        private double density = Double.NaN;
        private double temperature = Double.NaN;

        Similar(CoolPropHandle dense, CoolPropHandle dilute) {
            this.dense = dense;
            this.dilute = dilute;
        }

        void move(double rho, double t, boolean liquid) {
            if (rho == density && t == temperature) {
                return;
            }
            // known again only once both have arrived
            density = Double.NaN;
            dense.update(CoolPropInputs.DENSITY_TEMPERATURE, rho, t);
            if (CoolPropPhases.of(dense) == Phase.TWO_PHASE) {
                // the saturation curves of the two fluids differ by a little: a saturated state fell just inside
                dense.update(CoolPropInputs.QUALITY_TEMPERATURE, liquid ? 0 : 1, t);
            }
            dilute.update(CoolPropInputs.DENSITY_TEMPERATURE, DILUTE, t);
            density = rho;
            temperature = t;
        }

        double residual(CoolPropOutput key) {
            return dense.output(key) - dilute.output(key);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CorrespondingStatesTransport model && data.equals(model.data);
    }

    @Override
    public int hashCode() {
        return data.hashCode();
    }

    private CoolPropHandle open(String name) {
        return coolProp.get().open(name, name);
    }

    @Override
    public double viscosity(double temperature, double density, double pressure) {
        Scales s = scales();
        double residual = residual(s, temperature, density, CoolPropOutput.VISCOSITY);
        double shape = 1 - data.liquidFactor * Math.max(0, density / s.critical - 1);
        return data.gasViscosity.value(temperature) + s.viscosity * residual * shape;
    }

    @Override
    public double conductivity(double temperature, double density, double pressure) {
        Scales s = scales();
        double residual = residual(s, temperature, density, CoolPropOutput.CONDUCTIVITY);
        return data.gasConductivity.value(temperature) + s.conductivity * residual;
    }

    /** The similar fluid's property at the mapped state less that of its dilute gas. */
    private double residual(Scales s, double temperature, double density, CoolPropOutput key) {
        Similar at = similar.get();
        at.move(density * s.density, Math.max(temperature / s.temperature, s.lowest), density > s.critical);
        return at.residual(key);
    }

    private Scales scales() {
        Scales known = scales;
        if (known == null) {
            CoolPropHandle own = open(data.fluid);
            CoolPropHandle other = similar.get().dense;
            double molarMass = own.output(CoolPropOutput.MOLAR_MASS) / other.output(CoolPropOutput.MOLAR_MASS);
            double lowest = other.output(CoolPropOutput.MINIMUM_TEMPERATURE);
            double critical = own.output(CoolPropOutput.CRITICAL_DENSITY);
            double density = other.output(CoolPropOutput.CRITICAL_DENSITY) / critical;
            double f =
                    own.output(CoolPropOutput.CRITICAL_TEMPERATURE) / other.output(CoolPropOutput.CRITICAL_TEMPERATURE);
            double h = Math.pow(density * molarMass, -2.0 / 3.0);
            known = new Scales(
                    f, density, critical, Math.sqrt(f * molarMass) * h, Math.sqrt(f / molarMass) * h, lowest);
            scales = known;
            own.close();
        }
        return known;
    }
}
