package dev.penstock.turbomachinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import dev.penstock.errors.OutsideValidity;
import dev.penstock.quantities.Constants;
import org.junit.jupiter.api.Test;

class ImpellerOutletTest {

    private static final double FOOT = 0.3048;
    private static final double G = Constants.STANDARD_GRAVITY;

    /** Published: [nasa-sp-125] sample calculation 6-7, A-1 oxidizer impeller (transcribed). */
    @Test
    void sampleImpellerHasThePublishedTriangle() {
        double head = 2930 * FOOT * G;
        double u2 = 453 * FOOT;
        double flow = 12855 * 3.785411784e-3 / 60;
        // eight vanes; what they and the boundary layers leave of the circumference follows from the book's width
        ImpellerOutlet outlet =
                ImpellerOutlet.of(u2, 14.8 * 0.0254, 1.19 * head, flow, Math.toRadians(24), 0.74, 0.886);
        assertThat(outlet.whirl() / FOOT).isCloseTo(248, withinPercentage(1.5)); // book 248 ft/s
        assertThat(outlet.whirlWithoutSlip() / FOOT).isCloseTo(335, withinPercentage(1.5)); // book 335 ft/s
        assertThat(outlet.meridionalVelocity() / FOOT).isCloseTo(52.5, withinPercentage(1.5)); // book 52.5 ft/s
        assertThat(outlet.width() / 0.0254).isCloseTo(1.91, withinPercentage(1.5)); // book 1.91 in
    }

    @Test
    void slipFactorsFollowTheirFormulas() {
        // limits: a vane angle of 90° and many vanes; computed by hand
        assertThat(ImpellerOutlet.wiesner(Math.PI / 2, 8)).isCloseTo(1 - Math.pow(8, -0.7), within(1e-12));
        assertThat(ImpellerOutlet.stodola(Math.PI / 2, 8)).isCloseTo(1 - Math.PI / 8, within(1e-12));
        assertThat(ImpellerOutlet.wiesner(Math.toRadians(24), 40))
                .isGreaterThan(ImpellerOutlet.wiesner(Math.toRadians(24), 6));
    }

    @Test
    void moreWhirlThanTipSpeedIsRefused() {
        assertThatThrownBy(() -> ImpellerOutlet.of(100, 0.1, 9000, 0.01, 0.4, 0.7, 0.9))
                .isInstanceOf(OutsideValidity.class);
    }
}
