package dev.penstock.cooling.jacket;

import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.ExtensionKind;
import dev.penstock.cooling.design.JacketCase;
import dev.penstock.cooling.gas.Bartz;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.HotGas;
import dev.penstock.cooling.gas.HotGasProfile;
import dev.penstock.cooling.gas.HotGasStation;
import dev.penstock.cooling.gas.RecoveryTemperature;
import dev.penstock.cooling.wall.WallLibrary;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import java.util.List;

/**
 * Where a jacket ends whose design leaves that open: at the nozzle exit, or before it where a sheet behind it lasts by radiating.
 * <pre>ε_end ≥ 40 and h(ε) (T_aw − T_max) = e σ T_max⁴</pre>
 * T_max and e the limit and the emissivity of the sheet, h by {@link Bartz}, which reads high on a nozzle, so that the sheet then stays
 * below its limit. A design rule of our own within common practice; 40 is the least for which a sheet is thought of, whatever it stands.
 */
final class JacketEnd {

    static final ModelCard CARD = new ModelCard(
            "cooling.jacket-end",
            "Where a jacket ends",
            "h(e) (T_aw - T_max) = emissivity sigma T_max^4, at 40 at least, at the exit at most",
            "first estimate; write end_area_ratio to replace it",
            "not applicable",
            List.of("bartz-1957", "common practice, no source"));

    private JacketEnd() {}

    /** The case with its end written out where a radiating sheet follows; the same case otherwise. */
    static JacketCase stated(JacketCase question, WallLibrary walls) {
        CoolantRoute route = question.design().route();
        boolean radiating = question.design()
                .extension()
                .filter(e -> e.kind() == ExtensionKind.RADIATING)
                .isPresent();
        if (!radiating || route.endAreaRatio().isPresent()) {
            return question;
        }
        WallMaterial sheet =
                walls.material(question.design().extension().orElseThrow().material());
        double end = beyond(question.gas(), sheet, question.design().gasSide().properties());
        return question.withDesign(question.design().withRoute(route.to(end)));
    }

    /** The first place from the least end on where the sheet lasts, straight between stations; the exit if it lasts nowhere. */
    private static double beyond(HotGasProfile profile, WallMaterial sheet, GasSideDesign.Properties properties) {
        HotGas gas = profile.gas();
        double prandtl = gas.prandtl(properties);
        double throat = Bartz.throatCoefficient(profile, properties);
        double limit = sheet.maximumTemperature();
        double radiated = sheet.emissivity() * Constants.STEFAN_BOLTZMANN * Math.pow(limit, 4);
        double before = 1;
        double excessBefore = Double.POSITIVE_INFINITY;
        for (HotGasStation s : profile.stations()) {
            double ratio = profile.areaRatio(s);
            if (s.x() <= 0) {
                continue;
            }
            double coefficient = throat
                    * Math.pow(ratio, -Bartz.AREA_EXPONENT)
                    * Bartz.sigma(limit, gas.temperature(), s.gamma(), s.mach());
            double adiabatic = RecoveryTemperature.of(gas.temperature(), s.gamma(), s.mach(), prandtl);
            double excess = Math.log(Math.max(1e-9, coefficient * (adiabatic - limit) / radiated));
            if (excess <= 0) {
                double share = excessBefore == Double.POSITIVE_INFINITY ? 1 : excessBefore / (excessBefore - excess);
                return Math.max(CoolantRoute.LARGEST_DEFAULT_AREA_RATIO, before + share * (ratio - before));
            }
            before = ratio;
            excessBefore = excess;
        }
        return Math.max(before, CoolantRoute.LARGEST_DEFAULT_AREA_RATIO);
    }
}
