package io.github.heatswell.scenarios.release;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The files of a jar with their bytes, without the folders. */
record Jar(Path path, Map<String, byte[]> files) {

    private static final String MANIFEST = "META-INF/MANIFEST.MF";

    static Jar read(Path path) {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipFile zip = new ZipFile(path.toFile())) {
            for (ZipEntry entry : zip.stream().filter(one -> !one.isDirectory()).toList()) {
                try (InputStream content = zip.getInputStream(entry)) {
                    if (files.put(entry.getName(), content.readAllBytes()) != null) {
                        throw new IllegalStateException(path + " holds " + entry.getName() + " twice");
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(path + " cannot be read", e);
        }
        return new Jar(path, files);
    }

    boolean has(String name) {
        return files.containsKey(name);
    }

    String text(String name) {
        byte[] content = files.get(name);
        if (content == null) {
            throw new AssertionError(path + " holds no " + name);
        }
        return new String(content, StandardCharsets.UTF_8);
    }

    /** The names of files that end so. */
    List<String> ending(String suffix) {
        return files.keySet().stream().filter(name -> name.endsWith(suffix)).toList();
    }

    Attributes manifest() throws IOException {
        Manifest manifest = new Manifest();
        try (InputStream content = new ByteArrayInputStream(files.get(MANIFEST))) {
            manifest.read(content);
        }
        return manifest.getMainAttributes();
    }
}
