package dev.penstock.reports.text;

import dev.penstock.input.DataFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a number was made with, so that it can be traced and made again.
 *
 * @param penstock version of Penstock
 * @param coolProp version of CoolProp, or that an own library was used
 * @param data digest of the fluid and gas files together
 * @param java version and maker of Java
 * @param files SHA-256 of each of those files, by its path from the home folder
 */
public record Software(String penstock, String coolProp, String data, String java, Map<String, String> files) {

    private static final int SHOWN = 12;

    public Software {
        files = Collections.unmodifiableMap(new TreeMap<>(files));
    }

    /**
     * @param home home folder
     * @param penstock version of Penstock
     * @return what is in use there
     */
    public static Software of(Path home, String penstock) {
        Map<String, String> files = digests(home);
        StringBuilder all = new StringBuilder();
        files.forEach(
                (name, digest) -> all.append(name).append(' ').append(digest).append('\n'));
        return new Software(
                penstock,
                coolProp(home),
                shown(sha256(all.toString().getBytes(StandardCharsets.UTF_8))),
                System.getProperty("java.version") + " (" + System.getProperty("java.vendor") + ")",
                files);
    }

    /**
     * @param digest SHA-256 of a file
     * @return as many of its digits as people compare
     */
    public static String shown(String digest) {
        return digest.substring(0, Math.min(SHOWN, digest.length()));
    }

    private static String coolProp(Path home) {
        try {
            String stamp = Files.readString(home.resolve(".penstock/coolprop/VERSION"), StandardCharsets.UTF_8);
            return stamp.strip().split(" ")[0];
        } catch (IOException e) {
            return "library named by PENSTOCK_COOLPROP";
        }
    }

    private static Map<String, String> digests(Path home) {
        Map<String, String> digests = new TreeMap<>();
        Path fluids = DataFolder.fluids(home);
        try (Stream<Path> walk = Files.walk(fluids)) {
            List<Path> files = walk.filter(f -> f.toString().endsWith(".toml")).toList();
            for (Path file : files) {
                digests.put(
                        "fluids/" + fluids.relativize(file).toString().replace('\\', '/'),
                        sha256(Files.readAllBytes(file)));
            }
            return digests;
        } catch (IOException e) {
            return Map.of();
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
