package io.github.heatswell.scenarios.page;

import java.util.Collection;
import org.teavm.extension.spi.resources.ResourcesPolicy;

/** Names the tables that core reads from its jar, so that the compiler to script takes them along. */
public final class Tables implements ResourcesPolicy {

    private static final String CORE = "io/github/heatswell/";

    /** Made by the compiler to script, which finds it as a service. */
    public Tables() {}

    @Override
    public String[] supplyResources(Collection<? extends String> modules) {
        return new String[] {
            CORE + "place/rules.txt",
            CORE + "place/customs.txt",
            CORE + "system/us-draw-patterns.csv",
            CORE + "system/eu-tapping-profiles.csv",
            CORE + "study/direction-numbers.txt"
        };
    }
}
