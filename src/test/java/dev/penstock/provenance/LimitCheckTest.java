package dev.penstock.provenance;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.turbomachinery.pump.PumpLimit;
import dev.penstock.turbomachinery.shaft.ShaftLimit;
import java.util.List;
import org.junit.jupiter.api.Test;

class LimitCheckTest {

    private static LimitCheck suction(double value) {
        return LimitCheck.atLeast(PumpLimit.SUCTION_MARGIN, "fuel pump", value, 1.5, "-", "here");
    }

    private static LimitCheck tip(double value) {
        return LimitCheck.atMost(PumpLimit.TIP_SPEED, "fuel pump", value, 400, "m/s", "here");
    }

    @Test
    void aLimitThatSetsTheSpeedIsKeptButForWhatTheChoiceLeaves() {
        assertThat(suction(1.4985).met()).isFalse();
        assertThat(suction(1.4985).asSizing().met()).isTrue();
        assertThat(suction(1.4985).asSizing().verdict()).isEqualTo("sets the speed");
        assertThat(suction(1.48).asSizing().verdict()).isEqualTo("MISSED");
        assertThat(suction(2).asSizing().verdict()).isEqualTo("kept");
        assertThat(tip(400 * (1 + 1e-9)).met()).isTrue();
        assertThat(tip(400.1).met()).isFalse();
        LimitCheck critical = LimitCheck.atLeast(ShaftLimit.CRITICAL_SPEED_DISTANCE, "shaft", 0.2, 0.2, "-", "here");
        assertThat(critical.asSizing().verdict()).isEqualTo("sets the bearings");
    }

    @Test
    void theTightestIsOneThatTellsEnginesApart() {
        List<LimitCheck> limits = List.of(suction(1.5).asSizing(), tip(350), tip(300));
        assertThat(LimitCheck.tightest(limits)).contains(tip(350));
        assertThat(LimitCheck.tightest(List.of(suction(1.4).asSizing(), tip(350)))
                        .orElseThrow()
                        .kind())
                .isEqualTo(PumpLimit.SUCTION_MARGIN);
        assertThat(LimitCheck.tightest(List.of(suction(1.5).asSizing()))).isEmpty();
    }
}
