package dev.penstock.provenance;

import static dev.penstock.provenance.Place.own;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.quantities.Notation;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A figure is declared once: paths, lookups and trail follow from the declaration. */
class FigureTableTest {

    private static final ModelCard CARD =
            new ModelCard("test.model", "A model", "x = y", "everywhere", "exact", List.of("definition"));

    private record Wheel(String name, double speed) {}

    private record Cart(double load, OptionalDouble slope, List<Wheel> wheels, Optional<Wheel> spare) {}

    private static final FigureTable<Wheel> WHEELS = FigureTable.named(Wheel::name)
            .word("name", "wheel", Wheel::name)
            .number("speed_rad_s", "speed", Notation.SPEED, Wheel::speed)
            .by(CARD, own("name"))
            .table();

    private static final FigureTable<Cart> CARTS = FigureTable.<Cart>ofOne()
            .number("load_kg", "load", Notation.MASS, Cart::load)
            .moreIsBetter()
            .optional("slope", "slope", Notation.PERCENT, Cart::slope)
            .leftOutIfAbsent()
            .each("wheels", Cart::wheels, WHEELS)
            .part("spare", Cart::spare, WHEELS)
            .table();

    private final Cart cart = new Cart(
            12.34,
            OptionalDouble.empty(),
            List.of(new Wheel("front left", 100), new Wheel("rear", 0)),
            Optional.empty());

    @Test
    void everyNumberHasAPathByTheNameOfItsPart() {
        assertThat(WHEELS.paths("wheels", cart.wheels(), "speed_rad_s"))
                .containsExactly("wheels.front-left.speed_rad_s", "wheels.rear.speed_rad_s");
    }

    @Test
    void aFigureIsFoundByItsPathWithoutAThing() {
        Figure<Cart> speed = CARTS.at("wheels.front-left.speed_rad_s").orElseThrow();
        assertThat(speed.title()).isEqualTo("front left, speed");
        assertThat(speed.unit()).isEqualTo("rpm");
        assertThat(speed.number(cart)).hasValue(100);
        assertThat(CARTS.at("load_kg").orElseThrow().better()).isEqualTo(1);
    }

    /** A number that chooses its unit by itself names it; in a column one unit holds for all and stands in the heading. */
    @Test
    void aColumnHasOneUnit() {
        FigureTable<Cart> powers = FigureTable.<Cart>ofOne()
                .number("power_W", "power", Notation.POWER, Cart::load)
                .table();
        Figure<Cart> power = powers.figures().get(0);
        Cart weak = new Cart(5e5, OptionalDouble.empty(), List.of(), Optional.empty());
        Cart strong = new Cart(3e6, OptionalDouble.empty(), List.of(), Optional.empty());
        assertThat(power.text(weak)).isEqualTo("500.0 kW");
        Figure<Cart> column = power.column(List.of(weak, strong));
        assertThat(column.heading()).isEqualTo("power (MW)");
        assertThat(column.text(weak)).isEqualTo("0.5000");
        assertThat(column.text(strong)).isEqualTo("3.000");
    }

    @Test
    void aPartThatIsNotThereHasNoNumber() {
        assertThat(CARTS.at("wheels.middle.speed_rad_s").orElseThrow().number(cart))
                .isEmpty();
        assertThat(CARTS.at("spare.speed_rad_s").orElseThrow().number(cart)).isEmpty();
        assertThat(CARTS.at("slope").orElseThrow().text(cart)).isEqualTo("-");
    }

    @Test
    void aPathThatNoThingCanHaveIsNoFigure() {
        assertThat(CARTS.at("wheels.front-left.colour")).isEmpty();
        assertThat(CARTS.at("wheels.speed_rad_s")).isEmpty();
        assertThat(CARTS.at("doors.left.width_m")).isEmpty();
        assertThatThrownBy(() -> CARTS.figure("colour")).hasMessageContaining("no figure colour");
    }

    @Test
    void theTrailHoldsWhatHasAnOrigin() {
        Trail trail = new Trail();
        CARTS.record(cart, Place.at(""), trail);
        assertThat(trail.has("load_kg")).isFalse();
        Trail.Entry speed = trail.entry("wheels.front-left.speed_rad_s").orElseThrow();
        assertThat(speed.value()).isEqualTo(100);
        assertThat(speed.unit()).isEqualTo("rad/s");
        assertThat(speed.model()).isEqualTo(CARD);
        assertThat(speed.inputs()).containsExactly("wheels.front-left.name");
    }

    @Test
    void headingsNameTheUnitUnlessTheNumberDoes() {
        assertThat(WHEELS.figure("speed_rad_s").heading()).isEqualTo("speed (rpm)");
        assertThat(CARTS.figure("slope").heading()).isEqualTo("slope");
        assertThat(WHEELS.figure("speed_rad_s").briefly("v").heading()).isEqualTo("v (rpm)");
    }
}
