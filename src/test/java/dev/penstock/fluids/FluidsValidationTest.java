package dev.penstock.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The page {@code docs/validation/fluids.md}, made from the same rows as {@link PublishedStatesTest}. */
class FluidsValidationTest {

    private static final Path PAGE = PublishedState.HOME.resolve("docs/validation/fluids.md");

    @Test
    void pageOnDiskSaysWhatIsComputed() throws IOException {
        String page = page();
        if (Boolean.getBoolean("penstock.docs.write")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE))
                .as("docs/validation/fluids.md is out of date; run this test with -Dpenstock.docs.write=true")
                .isEqualTo(page);
    }

    private static String page() {
        FluidLibrary library = FluidLibrary.open(PublishedState.HOME);
        List<PublishedState> rows = PublishedState.all();
        StringBuilder text = new StringBuilder(String.join(
                "\n",
                "# Validation of fluid states",
                "",
                "Written by `FluidsValidationTest` from `src/test/resources/fluids/published-states.csv`; `PublishedStatesTest` holds each",
                "miss below its tolerance, which comes from the printed digits or the stated uncertainty. To write it anew:",
                "",
                "    mvn -q test -Dtest=FluidsValidationTest -Dpenstock.docs.write=true",
                "",
                "Rows of kind *from memory* are published figures as remembered, to all the digits shown, which nobody has looked up",
                "again. Rows of kind *independent library* are equations of another author in another program; a difference of a few tenths of a",
                "percent is that between the equations. Rows of kind *data file* only show that a figure was entered rightly: the",
                "correlation was made from the same source. Misses below 1e-4 are shown as such.",
                "",
                "| Fluid | State | Quantity | Computed | Expected | Unit | Miss | Kind | Source |",
                "|---|---|---|--:|--:|---|--:|---|---|",
                ""));
        for (PublishedState row : rows) {
            double computed = row.computed(library);
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %s | %.6g | %.6g | %s | %s | %s | %s |%n",
                    row.fluid(),
                    row.where(),
                    row.quantity().replace('_', ' '),
                    computed,
                    row.expected(),
                    row.unit(),
                    miss(computed / row.expected() - 1),
                    row.kind().text(),
                    row.source()));
        }
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    private static String miss(double relative) {
        return Math.abs(relative) < 1e-4 ? "< 0.01 %" : String.format(Locale.ROOT, "%+.2f %%", 100 * relative);
    }
}
