package io.github.heatswell.water;

import java.util.List;
import java.util.stream.IntStream;

/** One state of liquid water from a table of IAPWS-95 values, in SI units. */
record Reference(
        double temperature,
        double pressureAbsolute,
        boolean stable,
        double density,
        double expansivity,
        double compressibility,
        double heatCapacity,
        double enthalpy,
        double soundSpeed) {

    /** The 227 states of water_check.csv: 5 K by 8 pressures to 16 bar, all stable. */
    static List<Reference> nodes() {
        ReferenceTable table = ReferenceTable.read(
                "water_check.csv",
                227,
                "T_C",
                "p_abs_bar",
                "rho_kg_m3",
                "v_m3_kg",
                "beta_1_K",
                "kappa_1_Pa",
                "cp_J_kgK",
                "h_J_kg",
                "w_m_s");
        return IntStream.range(0, table.size())
                .mapToObj(row -> new Reference(
                        table.number(row, "T_C") + 273.15,
                        table.number(row, "p_abs_bar") * 1e5,
                        true,
                        table.number(row, "rho_kg_m3"),
                        table.number(row, "beta_1_K"),
                        table.number(row, "kappa_1_Pa"),
                        table.number(row, "cp_J_kgK"),
                        table.number(row, "h_J_kg"),
                        table.number(row, "w_m_s")))
                .toList();
    }

    /** The 320 states of iapws95_liquid.csv: between those nodes, to 25 bar, and below the saturation pressure. */
    static List<Reference> betweenNodes() {
        ReferenceTable table = ReferenceTable.read(
                "iapws95_liquid.csv",
                320,
                "T_K",
                "p_abs_Pa",
                "stable",
                "rho_kg_m3",
                "beta_1_K",
                "kappa_1_Pa",
                "cp_J_kgK",
                "h_J_kg");
        return IntStream.range(0, table.size())
                .mapToObj(row -> new Reference(
                        table.number(row, "T_K"),
                        table.number(row, "p_abs_Pa"),
                        table.text(row, "stable").equals("true"),
                        table.number(row, "rho_kg_m3"),
                        table.number(row, "beta_1_K"),
                        table.number(row, "kappa_1_Pa"),
                        table.number(row, "cp_J_kgK"),
                        table.number(row, "h_J_kg"),
                        Double.NaN))
                .toList();
    }

    static List<Reference> stableBetweenNodes() {
        return betweenNodes().stream().filter(Reference::stable).toList();
    }

    static List<Reference> metastable() {
        return betweenNodes().stream().filter(reference -> !reference.stable()).toList();
    }
}
