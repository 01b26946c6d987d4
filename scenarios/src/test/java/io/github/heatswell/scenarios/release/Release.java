package io.github.heatswell.scenarios.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where a build leaves what a release consists of. Other builds than {@code mvn verify} leave less. */
final class Release {

    /** The modules of the project, those they need first. */
    static final List<Module> MODULES = List.of(module("core"), module("charts"), module("scenarios"));

    /** The jar that holds the program with all it needs. */
    static final Path BUNDLE = module("scenarios").jar("-all");

    /** The licence as it stands in the project. */
    static final Path LICENCE = Path.of("..", "LICENSE");

    /** A module, named as its folder. */
    record Module(String name) {

        String artifact() {
            return "heatswell-" + name;
        }

        Path folder() {
            return Path.of("..", name);
        }

        /** One of its jars: the plain one with an empty addition, else such as {@code -sources}. */
        Path jar(String addition) {
            return folder().resolve("target/" + artifact() + "-" + version() + addition + ".jar");
        }

        Path pom() {
            return folder().resolve(".flattened-pom.xml");
        }

        List<Library> libraries() throws IOException {
            return Library.listedIn(folder().resolve("target/runtime-dependencies.txt"));
        }
    }

    private Release() {}

    static Module module(String name) {
        return new Module(name);
    }

    static String version() {
        String version = System.getProperty("heatswell.version");
        if (version == null) {
            throw new IllegalStateException(
                    "system property heatswell.version is missing: run this test by mvn verify");
        }
        return version;
    }

    static String licence() throws IOException {
        return Files.readString(LICENCE);
    }
}
