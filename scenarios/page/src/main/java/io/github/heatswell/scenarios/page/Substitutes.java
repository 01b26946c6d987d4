package io.github.heatswell.scenarios.page;

import org.teavm.extension.spi.substitution.SubstitutionPolicy;
import org.teavm.extension.spi.substitution.SubstitutionSink;

/** Tells the compiler to script which classes of Java it finds here instead of in its own library. */
public final class Substitutes implements SubstitutionPolicy {

    /** Made by the compiler to script, which finds it as a service. */
    public Substitutes() {}

    @Override
    public void contribute(SubstitutionSink sink) {
        sink.selectClasses(name -> name.equals("java.text.Normalizer") || name.startsWith("java.text.Normalizer$"))
                .packagePrefix("io.github.heatswell.scenarios.page.")
                .simpleNamePrefix("T");
    }
}
