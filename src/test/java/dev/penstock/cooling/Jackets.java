package dev.penstock.cooling;

import dev.penstock.cooling.coolant.CoolantSideDesign;
import dev.penstock.cooling.coolant.CoolantSideInputs;
import dev.penstock.cooling.design.ChannelLayout;
import dev.penstock.cooling.design.CircuitKey;
import dev.penstock.cooling.design.CoolantRoute;
import dev.penstock.cooling.design.ExtensionDesign;
import dev.penstock.cooling.design.JacketDesign;
import dev.penstock.cooling.design.JacketInputs;
import dev.penstock.cooling.design.JacketLimits;
import dev.penstock.cooling.gas.FilmDesign;
import dev.penstock.cooling.gas.GasSideDesign;
import dev.penstock.cooling.gas.GasSideInputs;
import dev.penstock.cooling.gas.HeatRelease;
import dev.penstock.cooling.wall.WallDesign;
import dev.penstock.cooling.wall.WallInputs;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Jackets for tests: what files that say nothing get. */
public final class Jackets {

    private Jackets() {}

    /** Milled copper-silver-zirconium liner in counterflow, sized by the solver. */
    public static JacketDesign automatic() {
        return new JacketDesign(
                CircuitKey.FIRST,
                wall(WallInputs.MATERIAL.standing().value()),
                channels(),
                route(JacketInputs.ROUTE.standing().value()),
                gasSide(),
                new CoolantSideDesign(
                        CoolantSideInputs.CORRELATION.standing().value(),
                        CoolantSideInputs.CURVATURE.standing().value(),
                        CoolantSideInputs.ROUGH_WALL.standing().value()),
                limits(
                        JacketLimits.USUAL_PRESSURE_DROP,
                        JacketInputs.LIFE_LIMIT.standing().value()),
                JacketInputs.CELLS.standing().value(),
                Optional.of(ExtensionDesign.standard()));
    }

    /** A wall of that material with everything else left to the solver. */
    public static WallDesign wall(String material) {
        return new WallDesign(
                material,
                OptionalDouble.empty(),
                WallInputs.CLOSEOUT_MATERIAL.standing().value(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    /** Milled channels, everything left to the solver. */
    public static ChannelLayout channels() {
        return new ChannelLayout(
                JacketInputs.CHANNELS.standing().value(), OptionalDouble.empty(), List.of(), OptionalDouble.empty());
    }

    /** That route over the whole length. */
    public static CoolantRoute route(CoolantRoute.Kind kind) {
        return new CoolantRoute(
                kind,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                JacketInputs.UPSTREAM_SHARE.standing().value());
    }

    /** The usual model of convection, frozen properties, radiation of the gas and, in a kerosene flame, soot. */
    public static GasSideDesign gasSide() {
        return gasSide(
                GasSideInputs.GAS_SIDE.standing().value(),
                GasSideInputs.RADIATION.standing().value());
    }

    /** That model of convection, with the measured soot and a liquid film, if the chamber has one. */
    public static GasSideDesign gasSide(GasSideDesign.Model model, boolean radiation) {
        return new GasSideDesign(
                model,
                GasSideInputs.GAS_PROPERTIES.standing().value(),
                radiation,
                GasSideInputs.SOOT.standing().value(),
                OptionalDouble.empty(),
                1,
                HeatRelease.LENGTH,
                FilmDesign.liquid());
    }

    /** Limits of material and coolant, that pressure drop over chamber pressure, that many load cycles. */
    public static JacketLimits limits(double pressureDropFraction, double life) {
        return new JacketLimits(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                JacketInputs.COKING_SHARE.standing().value(),
                pressureDropFraction,
                life);
    }
}
