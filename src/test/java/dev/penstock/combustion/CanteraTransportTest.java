package dev.penstock.combustion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.combustion.gas.MixtureTransport;
import dev.penstock.combustion.species.SpeciesSet;
import dev.penstock.combustion.species.ThermoTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Independent library: Cantera 3.2.0, mixture-averaged transport with the same collision figures. It integrates the
 * Stockmayer potential and lets dipoles induce dipoles, where we use Brokaw's term; that is the difference allowed for.
 */
class CanteraTransportTest {

    private static final SpeciesSet SET = Mixtures.LIBRARY.speciesFor(Set.of("C", "H", "N", "O", "Ar"));

    record Case(String name, double pressure, double temperature, double[] moles, double[] expected) {
        @Override
        public String toString() {
            return name + " at " + pressure + " Pa, " + temperature + " K";
        }
    }

    static List<Case> cases() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/combustion/cantera_transport.csv")).stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("case,"))
                .map(CanteraTransportTest::parse)
                .toList();
    }

    private static Case parse(String line) {
        String[] cells = line.split(",");
        double[] moles = new double[SET.size()];
        for (String part : cells[6].split(";")) {
            String[] pair = part.split(":");
            moles[SET.indexOf(pair[0])] = Double.parseDouble(pair[1]);
        }
        double[] expected = {Double.parseDouble(cells[3]), Double.parseDouble(cells[4]), Double.parseDouble(cells[5])};
        return new Case(cells[0], Double.parseDouble(cells[1]), Double.parseDouble(cells[2]), moles, expected);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void transportAgreesWithCantera(Case c) {
        ThermoTable thermo = SET.thermo();
        thermo.evaluate(c.temperature());
        MixtureTransport transport = new MixtureTransport(SET);
        assertThat(transport.update(c.temperature(), c.moles(), thermo.cp, SET.gasCount()))
                .isTrue();
        assertThat(transport.viscosity()).as("viscosity").isCloseTo(c.expected()[0], withinPercentage(5));
        assertThat(transport.frozenConductivity()).as("conductivity").isCloseTo(c.expected()[1], withinPercentage(5));
        double reacting = transport.reactingConductivity(c.temperature(), thermo.h);
        double whole = c.expected()[1] + c.expected()[2];
        assertThat(reacting).as("by reaction").isCloseTo(c.expected()[2], within(0.06 * whole));
    }
}
