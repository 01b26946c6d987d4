package io.github.heatswell.scenarios.page;

import java.util.Set;
import org.teavm.extension.spi.substitution.SubstitutionPolicy;
import org.teavm.extension.spi.substitution.SubstitutionSink;

/** Tells the compiler to script which classes it finds here instead: one that its library lacks, and one that starts threads. */
public final class Substitutes implements SubstitutionPolicy {

    private static final Set<String> REPLACED =
            Set.of("java.text.Normalizer", "io.github.heatswell.simulation.Workers");

    /** Made by the compiler to script, which finds it as a service. */
    public Substitutes() {}

    @Override
    public void contribute(SubstitutionSink sink) {
        sink.selectClasses(name -> REPLACED.contains(name.replaceAll("\\$.*", "")))
                .packagePrefix("io.github.heatswell.scenarios.page.")
                .simpleNamePrefix("T");
    }
}
