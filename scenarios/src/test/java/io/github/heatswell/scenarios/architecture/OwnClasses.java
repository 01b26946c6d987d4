package io.github.heatswell.scenarios.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.LocationProvider;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The classes of the three modules without their tests, from the folders they were compiled to. The archives of core and charts
 * on the class path are no good for that: two tests that read one at the same time disturb each other.
 */
public final class OwnClasses implements LocationProvider {

    private static final JavaClasses ALL = new ClassFileImporter().importLocations(folders());

    static JavaClasses all() {
        return ALL;
    }

    @Override
    public Set<Location> get(Class<?> testClass) {
        return folders();
    }

    private static Set<Location> folders() {
        return Stream.of("core", "charts", "scenarios")
                .map(module -> Location.of(Path.of("..", module, "target", "classes")))
                .collect(Collectors.toSet());
    }
}
