package io.github.heatswell.scenarios.interview;

import java.util.ArrayList;
import java.util.List;

/** Answers of whole interviews; the houses are invented. */
final class Answering {

    private Answering() {}

    /** A house with a check valve and a vessel, everything known. */
    static List<String> si() {
        return List.of(
                "dk",
                "Orchard lodge",
                "check valve",
                "4.2 bar",
                "5.1 barg",
                "9 degC",
                "230 litres",
                "glass-lined",
                "10 bar",
                "gas",
                "11.2 kW",
                "58 °C",
                "7 bar",
                "none",
                "none",
                "yes",
                "12 L",
                "3.5 bar",
                "none",
                "heating",
                "none",
                "dk");
    }

    /** A house with a reducing valve and a combined relief valve, in US units. */
    static List<String> us() {
        return List.of(
                "us-ipc",
                "Ridge street 4",
                "PRV",
                "90 psi",
                "dk",
                "50 psig",
                "none",
                "50 degF",
                "50 gal",
                "steel",
                "150 psi",
                "natural gas",
                "40000 BTU/hr",
                "125 °F",
                "150 psi",
                "210 degF",
                "no",
                "us-medium",
                "no",
                "dk",
                "none");
    }

    /** Nothing known at all. */
    static List<String> nothing() {
        return List.of(
                "dk", "", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk", "dk",
                "dk", "dk");
    }

    /** The answers with one line put in front of the answer of this number, 0 being the first. */
    static List<String> with(List<String> answers, int at, String... lines) {
        List<String> more = new ArrayList<>(answers);
        more.addAll(at, List.of(lines));
        return more;
    }

    /** The answers with the one of this number replaced. */
    static List<String> replacing(List<String> answers, int at, String line) {
        List<String> other = new ArrayList<>(answers);
        other.set(at, line);
        return other;
    }
}
