package dev.penstock.chamber.flow;

import dev.penstock.combustion.WorkingState;
import java.util.ArrayList;
import java.util.List;

/** Isentrope of a calorically perfect gas, for limits that have closed forms. */
public final class PerfectGas implements Isentrope {

    private final double gamma;
    private final double gasConstant;
    private final double pressure;
    private final double temperature;

    public PerfectGas(double gamma, double gasConstant, double pressure, double temperature) {
        this.gamma = gamma;
        this.gasConstant = gasConstant;
        this.pressure = pressure;
        this.temperature = temperature;
    }

    double cp() {
        return gamma * gasConstant / (gamma - 1);
    }

    WorkingState atRest() {
        return at(pressure);
    }

    @Override
    public WorkingState at(double p) {
        double t = temperature * Math.pow(p / pressure, (gamma - 1) / gamma);
        return new WorkingState(
                p, t, p / (gasConstant * t), cp() * t, 0, cp(), gamma, Math.sqrt(gamma * gasConstant * t));
    }

    IsentropicFlow flow() {
        return new IsentropicFlow(this, atRest(), new NearExpansion(), throat -> this);
    }

    /** Profile on nodes like those of a real expansion. */
    public GasProfile profile(double areaRatio) {
        IsentropicFlow flow = flow();
        List<NozzleStation> subsonic = new ArrayList<>();
        double top = Math.log(pressure);
        double middle = Math.log(flow.throat().pressure());
        double bottom = Math.log(flow.atAreaRatio(areaRatio).pressure());
        for (int i = 0; i <= 6; i++) {
            double t = i / 6.0;
            subsonic.add(station(flow, at(Math.exp(top + t * t * (middle - top))), false));
        }
        List<NozzleStation> supersonic = new ArrayList<>();
        int n = Math.max(4, (int) Math.ceil((middle - bottom) / 0.35));
        for (int i = 0; i <= n; i++) {
            supersonic.add(station(flow, at(Math.exp(middle + (bottom - middle) * i / n)), i > 0));
        }
        return new GasProfile(subsonic, supersonic, cp() * temperature, new RecombinationTable(0), 0);
    }

    static NozzleStation station(IsentropicFlow flow, WorkingState s, boolean supersonic) {
        double v = flow.velocity(s);
        return new NozzleStation(
                v == 0 ? Double.MAX_VALUE : Math.max(1, flow.areaRatio(s)),
                s.pressure(),
                s.temperature(),
                s.density(),
                v,
                v / s.soundSpeed(),
                s.enthalpy(),
                s.gamma(),
                s.isobaricHeatCapacity(),
                1e-4 * Math.pow(s.temperature() / 3500, 0.7),
                0.7);
    }
}
