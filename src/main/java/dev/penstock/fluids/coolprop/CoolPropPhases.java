package dev.penstock.fluids.coolprop;

import dev.penstock.fluids.state.Phase;

/** CoolProp's phase numbers in Penstock's words. Saturated liquid and vapour count as single-phase. */
final class CoolPropPhases {

    private static final int LIQUID_CODE = 0;
    private static final int SUPERCRITICAL_GAS_CODE = 2;
    private static final int SUPERCRITICAL_LIQUID_CODE = 3;
    private static final int GAS_CODE = 5;
    private static final int TWO_PHASE_CODE = 6;

    private CoolPropPhases() {}

    static Phase of(CoolPropHandle handle) {
        Phase phase = of(handle.output(CoolPropOutput.PHASE));
        return phase == Phase.TWO_PHASE ? saturated(handle.output(CoolPropOutput.QUALITY)) : phase;
    }

    /** @return the phase of a number of CoolProp's; a saturated state counts as two-phase here */
    static Phase of(double code) {
        return switch ((int) code) {
            case LIQUID_CODE, SUPERCRITICAL_LIQUID_CODE -> Phase.LIQUID;
            case GAS_CODE, SUPERCRITICAL_GAS_CODE -> Phase.GAS;
            case TWO_PHASE_CODE -> Phase.TWO_PHASE;
            default -> Phase.SUPERCRITICAL;
        };
    }

    private static Phase saturated(double quality) {
        if (quality <= 0) {
            return Phase.LIQUID;
        }
        return quality >= 1 ? Phase.GAS : Phase.TWO_PHASE;
    }
}
