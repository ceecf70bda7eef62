package dev.penstock.fluids;

import dev.penstock.input.InputFile;
import dev.penstock.input.InputTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Ids of the fluids taken where nothing else is said, from the resource {@code usual.toml}. */
public final class UsualFluids {

    private static final String RESOURCE = "/dev/penstock/fluids/usual.toml";

    private record Ids(String oxidizer, String fuel, String pressurant, String transpirant) {

        private static final Ids READ = read();

        private static Ids read() {
            InputFile file = InputFile.parse("usual.toml", text(), Map.of());
            InputTable root = file.root();
            Ids ids = new Ids(
                    root.text("oxidizer"), root.text("fuel"), root.text("pressurant"), root.text("transpirant"));
            file.finish();
            return ids;
        }

        private static String text() {
            try (InputStream in = UsualFluids.class.getResourceAsStream(RESOURCE)) {
                return new String(in.readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(RESOURCE, e);
            }
        }
    }

    private UsualFluids() {}

    /** @return id of an oxidizer that stands in for one that could not be read */
    public static String oxidizer() {
        return Ids.READ.oxidizer();
    }

    /** @return id of a fuel that stands in for one that could not be read */
    public static String fuel() {
        return Ids.READ.fuel();
    }

    /** @return id of the gas in bottles that fill tanks or start turbopumps */
    public static String pressurant() {
        return Ids.READ.pressurant();
    }

    /** @return id of the fluid that seeps through a porous wall */
    public static String transpirant() {
        return Ids.READ.transpirant();
    }
}
