package dev.penstock.reports;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a number was made with, so that it can be traced and made again.
 *
 * @param penstock version of Penstock
 * @param coolProp version of CoolProp, or that an own library was used
 * @param data digest of the fluid and gas files
 * @param java version of Java
 */
public record Software(String penstock, String coolProp, String data, String java) {

    private static final int SHOWN = 12;

    /**
     * @param home home folder
     * @param penstock version of Penstock
     * @return what is in use there
     */
    public static Software of(Path home, String penstock) {
        return new Software(
                penstock, coolProp(home), digest(home.resolve("fluids")), System.getProperty("java.version"));
    }

    private static String coolProp(Path home) {
        try {
            String stamp = Files.readString(home.resolve(".penstock/coolprop/VERSION"), StandardCharsets.UTF_8);
            return stamp.strip().split(" ")[0];
        } catch (IOException e) {
            return "library named by PENSTOCK_COOLPROP";
        }
    }

    private static String digest(Path folder) {
        try (Stream<Path> walk = Files.walk(folder)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            List<Path> files = walk.filter(Files::isRegularFile).sorted().toList();
            for (Path file : files) {
                digest.update(
                        folder.relativize(file).toString().replace('\\', '/').getBytes(StandardCharsets.UTF_8));
                digest.update(Files.readAllBytes(file));
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, SHOWN);
        } catch (IOException e) {
            return "unknown";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
