package dev.penstock.cooling.jacket;

import dev.penstock.cooling.wall.ChannelKind;
import dev.penstock.cooling.wall.FatigueLife;
import dev.penstock.cooling.wall.LinerBuckling;
import dev.penstock.cooling.wall.WallMaterial;
import dev.penstock.cooling.wall.WallStress;
import dev.penstock.errors.Require;

/**
 * Strength of the hot wall at one station.
 *
 * @param x axial distance from the throat, negative upstream (m)
 * @param areaRatio cross-section over throat area (-)
 * @param pressureStress primary stress of the coolant pressure in floor or tube (Pa)
 * @param thermalStress elastic thermal stress through the wall (Pa)
 * @param landStress tension in the lands (Pa); zero for tubes
 * @param landStrength yield strength of the lands, midway between floor and coolant temperature (Pa)
 * @param yieldStrength yield strength at the mean wall temperature (Pa)
 * @param strainRange strain of one firing (-)
 * @param life load cycles that the wall stands (-)
 * @param bucklingStrain thermal strain at which it would buckle (-)
 * @param thermalStrain thermal strain of the wall's mean against the shell (-)
 */
public record WallAssessment(
        double x,
        double areaRatio,
        double pressureStress,
        double thermalStress,
        double landStress,
        double landStrength,
        double yieldStrength,
        double strainRange,
        double life,
        double bucklingStrain,
        double thermalStrain) {

    public WallAssessment {
        Require.finite("wall", "axial position (m)", x);
        Require.notNegative("wall", "pressure stress (Pa)", pressureStress);
        Require.notNegative("wall", "thermal stress (Pa)", thermalStress);
        Require.notNegative("wall", "land stress (Pa)", landStress);
        Require.positive("wall", "yield strength (Pa)", landStrength);
        Require.positive("wall", "yield strength (Pa)", yieldStrength);
        Require.notNegative("wall", "strain range (-)", strainRange);
        Require.positive("wall", "life (cycles)", life);
        Require.positive("wall", "buckling strain (-)", bucklingStrain);
        Require.notNegative("wall", "thermal strain (-)", thermalStrain);
    }

    static WallAssessment of(JacketStation s, double gasPressure, WallMaterial m, ChannelKind kind) {
        double mean = 0.5 * (s.gasSideWallTemperature() + s.coolantSideWallTemperature());
        double difference = s.coolantPressure() - gasPressure;
        boolean tube = kind == ChannelKind.TUBE;
        double shell = s.coolantTemperature();
        return new WallAssessment(
                s.x(),
                s.areaRatio(),
                tube
                        ? WallStress.tube(difference, s.channelWidth(), s.wallThickness())
                        : WallStress.channelFloor(difference, s.channelWidth(), s.wallThickness()),
                WallStress.thermal(
                        m.modulus().at(mean),
                        m.expansion().at(mean),
                        s.heatFlux(),
                        s.wallThickness(),
                        m.poissonRatio(),
                        m.conductivity().at(mean)),
                tube ? 0 : WallStress.land(s.coolantPressure(), s.channelWidth(), Math.max(1e-6, s.landWidth())),
                m.yieldStrength().at(0.5 * (s.coolantSideWallTemperature() + s.coolantTemperature())),
                m.yieldStrength().at(mean),
                FatigueLife.firingStrain(m, s.gasSideWallTemperature(), s.coolantSideWallTemperature(), shell),
                FatigueLife.life(m, s.gasSideWallTemperature(), s.coolantSideWallTemperature(), shell),
                tube
                        ? LinerBuckling.tubeStrain(m, mean, s.wallThickness(), s.channelWidth())
                        : LinerBuckling.channelStrain(m, mean, s.wallThickness(), s.channelWidth()),
                m.expansion().at(mean) * Math.abs(mean - shell));
    }
}
