package dev.penstock.turbomachinery.electric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ElectricDriveTest {

    private final ElectricDrive drive = ElectricDrive.usual();

    @Test
    void shortBurnsAreSizedByPowerAndLongOnesByEnergy() {
        assertThat(drive.size(50e3, 20).energyLimited()).isFalse();
        assertThat(drive.size(50e3, 600).energyLimited()).isTrue();
    }

    @Test
    void powerIsConserved() {
        ElectricSizing sizing = drive.size(80e3, 200);
        assertThat(sizing.shaftPower() + sizing.heat()).isCloseTo(sizing.batteryPower(), within(1e-6));
        assertThat(sizing.batteryPower() * 0.93 * 0.97).isCloseTo(80e3, withinPercentage(1e-9));
    }

    @Property(tries = 50)
    void massGrowsWithBurnTime(@ForAll @DoubleRange(min = 1, max = 2000) double time) {
        assertThat(drive.size(1e5, 1.1 * time).mass())
                .isGreaterThanOrEqualTo(drive.size(1e5, time).mass());
    }

    @Test
    void aFiveMinuteBurnNeedsTheEnergyItDraws() {
        // 100 kW at the shaft for 300 s: 100e3/(0.93 0.97) 300 = 33.26 MJ drawn, over 0.92 0.88 held = 41.1 MJ, at 612
        // kJ/kg
        assertThat(drive.size(100e3, 300).batteryMass()).isCloseTo(67.1, withinPercentage(0.2));
    }

    /**
     * Worked by hand: 90 kW over 0.9 · 0.95 is 105 263.16 W drawn; motors 90/5 kg, inverters 100/10 kg; 100 s ask 24.366 kg for energy,
     * and 35.0877 kg for power, which hold 21.05263 MJ.
     */
    @Test
    void everyMassOfAShortBurn() {
        ElectricDrive stated = new ElectricDrive(5000, 0.9, 10_000, 0.95, 600e3, 3000, 0.9, 0.8);
        ElectricSizing sized = stated.size(90e3, 100);
        assertThat(sized.motorMass()).isCloseTo(18, withinPercentage(1e-9));
        assertThat(sized.inverterMass()).isCloseTo(10, withinPercentage(1e-9));
        assertThat(sized.batteryMass()).isCloseTo(35.087719, withinPercentage(1e-5));
        assertThat(sized.batteryEnergy()).isCloseTo(21.052632e6, withinPercentage(1e-5));
        assertThat(sized.mass()).isCloseTo(63.087719, withinPercentage(1e-5));
        assertThat(stated.size(90e3, 200).batteryMass()).isCloseTo(2 * 24.366472, withinPercentage(1e-5));
    }
}
