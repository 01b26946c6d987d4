#!/usr/bin/env python3
# Licensed under the Apache License, Version 2.0; see the LICENSE file at the root of this repository.
"""Makes the coefficients of GibbsPolynomialWater and the table iapws95_liquid.csv beside this file.

    python3 gibbs_polynomial_fit.py            check, fit, print the coefficients and the error table
    python3 gibbs_polynomial_fit.py table      check, then print iapws95_liquid.csv

Needs numpy and nothing else. The reference is the IAPWS Formulation 1995, evaluated here from its published
coefficients (IAPWS R6-95(2018), "Revised Release on the IAPWS Formulation 1995 for the Thermodynamic Properties of
Ordinary Water Substance for General and Scientific Use"). Before anything else is done, the implementation is held
against the computer-program verification values of that release, Table 7.

The fit. With x = (T - 348.15 K)/75 K and q = (p - 1.25 MPa)/1.25 MPa the specific volume is

    v(T, p) = 1e-3 m3/kg (A(x) + q B(x) + q^2 C(x))

and the enthalpy on the isobar 1.25 MPa is H(x) kJ/kg. Integrating v - T dv/dT over p from that isobar gives h(T, p),
and its temperature derivative c_p(T, p). All of v, dv/dT, dv/dp, h and c_p are then linear in the coefficients, so they
are fitted together by one linear least-squares problem. Its weights are the errors one is ready to accept (TOLERANCE);
they are then sharpened by Lawson's iteration until the largest weighted error is as small as it gets.

The window of the fit is wider than the stated range by 1 K on either side and by 0.05 MPa above, and it reaches down to
zero pressure at every temperature: below the saturation pressure the reference is the metastable liquid branch of
IAPWS-95. That keeps a solver's trial steps on smooth ground.
"""
import sys

import numpy as np

# ---------------------------------------------------------------------------------------- IAPWS-95, the reference

R = 461.51805  # J/(kg K), eq. 3
T_CRITICAL = 647.096  # K, eq. 1
RHO_CRITICAL = 322.0  # kg/m3, eq. 2

# Table 1, ideal-gas part: n1 to n8, and gamma4 to gamma8.
IDEAL_N = [-8.3204464837497, 6.6832105275932, 3.00632, 0.012436, 0.97315, 1.27950, 0.96956, 0.24873]
IDEAL_GAMMA = [1.28728967, 3.53734222, 7.74073708, 9.24437796, 27.5075105]

# Table 2, residual part, rows 1 to 51: c, d, t, n.
POWER_TERMS = [
    (0, 1, -0.5, 0.12533547935523e-1), (0, 1, 0.875, 0.78957634722828e1), (0, 1, 1, -0.87803203303561e1),
    (0, 2, 0.5, 0.31802509345418), (0, 2, 0.75, -0.26145533859358), (0, 3, 0.375, -0.78199751687981e-2),
    (0, 4, 1, 0.88089493102134e-2),
    (1, 1, 4, -0.66856572307965), (1, 1, 6, 0.20433810950965), (1, 1, 12, -0.66212605039687e-4),
    (1, 2, 1, -0.19232721156002), (1, 2, 5, -0.25709043003438), (1, 3, 4, 0.16074868486251),
    (1, 4, 2, -0.40092828925807e-1), (1, 4, 13, 0.39343422603254e-6), (1, 5, 9, -0.75941377088144e-5),
    (1, 7, 3, 0.56250979351888e-3), (1, 9, 4, -0.15608652257135e-4), (1, 10, 11, 0.11537996422951e-8),
    (1, 11, 4, 0.36582165144204e-6), (1, 13, 13, -0.13251180074668e-11), (1, 15, 1, -0.62639586912454e-9),
    (2, 1, 7, -0.10793600908932), (2, 2, 1, 0.17611491008752e-1), (2, 2, 9, 0.22132295167546),
    (2, 2, 10, -0.40247669763528), (2, 3, 10, 0.58083399985759), (2, 4, 3, 0.49969146990806e-2),
    (2, 4, 7, -0.31358700712549e-1), (2, 4, 10, -0.74315929710341), (2, 5, 10, 0.47807329915480),
    (2, 6, 6, 0.20527940895948e-1), (2, 6, 10, -0.13636435110343), (2, 7, 10, 0.14180634400617e-1),
    (2, 9, 1, 0.83326504880713e-2), (2, 9, 2, -0.29052336009585e-1), (2, 9, 3, 0.38615085574206e-1),
    (2, 9, 4, -0.20393486513704e-1), (2, 9, 8, -0.16554050063734e-2), (2, 10, 6, 0.19955571979541e-2),
    (2, 10, 9, 0.15870308324157e-3), (2, 12, 8, -0.16388568342530e-4),
    (3, 3, 16, 0.43613615723811e-1), (3, 4, 22, 0.34994005463765e-1), (3, 4, 23, -0.76788197844621e-1),
    (3, 5, 23, 0.22446277332006e-1),
    (4, 14, 10, -0.62689710414685e-4),
    (6, 3, 50, -0.55711118565645e-9), (6, 6, 44, -0.19905718354408), (6, 6, 46, 0.31777497330738),
    (6, 6, 50, -0.11841182425981),
]
# Table 2, rows 52 to 54: d, t, n, alpha, beta, gamma; epsilon is 1 in all three.
GAUSSIAN_TERMS = [
    (3, 0, -0.31306260323435e2, 20, 150, 1.21),
    (3, 1, 0.31546140237781e2, 20, 150, 1.21),
    (3, 4, -0.25213154341695e4, 20, 250, 1.25),
]
# Table 2, rows 55 and 56: b, n, C, D; in both a = 3.5, B = 0.2, A = 0.32, beta = 0.3.
CRITICAL_TERMS = [(0.85, -0.14874640856724, 28, 700), (0.95, 0.31806110878444, 32, 800)]

# Table 7: T in K, rho in kg/m3, then p in MPa, c_v in kJ/(kg K), w in m/s, s in kJ/(kg K).
TABLE_7_LIQUID = [
    (300.0, 996.556, 0.0992418352, 4.13018112, 1501.51914, 0.393062643),
    (300.0, 1005.308, 20.0022515, 4.06798347, 1534.92501, 0.387405401),
    (500.0, 838.025, 10.0003858, 3.22106219, 1271.28441, 2.56690919),
]


class Taylor:
    """A value with its first and second partial derivatives in delta (d) and tau (t)."""

    FIELDS = ("v", "d", "t", "dd", "dt", "tt")

    def __init__(self, v, d=0.0, t=0.0, dd=0.0, dt=0.0, tt=0.0):
        self.v, self.d, self.t, self.dd, self.dt, self.tt = v, d, t, dd, dt, tt

    def map(self, f, f1, f2):
        """The composition with a function of one variable, given its value and first two derivatives at v."""
        return Taylor(f, f1 * self.d, f1 * self.t, f2 * self.d * self.d + f1 * self.dd,
                      f2 * self.d * self.t + f1 * self.dt, f2 * self.t * self.t + f1 * self.tt)

    def __add__(self, other):
        other = other if isinstance(other, Taylor) else Taylor(other)
        return Taylor(*(getattr(self, name) + getattr(other, name) for name in Taylor.FIELDS))

    def __mul__(self, other):
        a, b = self, other if isinstance(other, Taylor) else Taylor(other)
        return Taylor(a.v * b.v, a.d * b.v + a.v * b.d, a.t * b.v + a.v * b.t,
                      a.dd * b.v + 2 * a.d * b.d + a.v * b.dd,
                      a.dt * b.v + a.d * b.t + a.t * b.d + a.v * b.dt,
                      a.tt * b.v + 2 * a.t * b.t + a.v * b.tt)

    def __pow__(self, n):
        if n == 0:
            return Taylor(np.ones_like(self.v))
        return self.map(self.v**n, n * self.v**(n - 1), n * (n - 1) * self.v**(n - 2))

    def exp(self):
        value = np.exp(self.v)
        return self.map(value, value, value)

    def log(self):
        return self.map(np.log(self.v), 1 / self.v, -1 / self.v**2)

    __radd__, __rmul__ = __add__, __mul__


def ideal_gas_part(delta, tau):
    """phi0 of eq. 5."""
    phi = delta.log() + IDEAL_N[0] + IDEAL_N[1] * tau + IDEAL_N[2] * tau.log()
    for n, gamma in zip(IDEAL_N[3:], IDEAL_GAMMA):
        phi = phi + n * (1.0 + -1.0 * (-gamma * tau).exp()).log()
    return phi


def residual_part(delta, tau):
    """phi^r of eq. 6."""
    phi = Taylor(np.zeros_like(delta.v))
    for c, d, t, n in POWER_TERMS:
        term = n * delta**d * tau**t
        phi = phi + (term * (-1.0 * delta**c).exp() if c else term)
    for d, t, n, alpha, beta, gamma in GAUSSIAN_TERMS:
        phi = phi + n * delta**d * tau**t * (-alpha * (delta + -1.0)**2 + -beta * (tau + -gamma)**2).exp()
    square = (delta + -1.0)**2
    for b, n, c, d in CRITICAL_TERMS:
        theta = 1.0 + -1.0 * tau + 0.32 * square**(1 / (2 * 0.3))
        distance = theta**2 + 0.2 * square**3.5
        phi = phi + n * distance**b * delta * (-c * square + -d * (tau + -1.0)**2).exp()
    return phi


def iapws95(temperature, density):
    """Properties in SI units (K, kg/m3, Pa, J) by the relations of Table 3."""
    delta, tau = Taylor(density / RHO_CRITICAL, 1.0), Taylor(T_CRITICAL / temperature, 0.0, 1.0)
    o, r = ideal_gas_part(delta, tau), residual_part(delta, tau)
    d, t = delta.v, tau.v
    dp_drho = R * temperature * (1 + 2 * d * r.d + d * d * r.dd)
    dp_dt = R * density * (1 + d * r.d - d * t * r.dt)
    cv = -R * t * t * (o.tt + r.tt)
    cp = cv + temperature * dp_dt**2 / (density**2 * dp_drho)
    return {
        "p": density * R * temperature * (1 + d * r.d), "dp_drho": dp_drho, "rho": density, "cv": cv, "cp": cp,
        "w": np.sqrt(dp_drho * cp / cv), "s": R * (t * (o.t + r.t) - o.v - r.v),
        "h": R * temperature * (1 + t * (o.t + r.t) + d * r.d),
        "beta": dp_dt / (density * dp_drho), "kappa": 1 / (density * dp_drho),
    }


def liquid(temperature, pressure):
    """The liquid state at a temperature (K) and pressure (Pa), by Newton's method from the liquid side."""
    density = 1001.0 - 0.0032 * (temperature - 277.0)**2
    for _ in range(30):
        state = iapws95(temperature, density)
        step = (pressure - state["p"]) / state["dp_drho"]
        density = density + step
        if np.max(np.abs(step / density)) < 1e-11:  # the step just taken leaves an error of its square
            return iapws95(temperature, density)
    raise ArithmeticError("no liquid density found")


def verify():
    """Compares with every digit of the liquid states of Table 7."""
    for temperature, density, p, cv, w, s in TABLE_7_LIQUID:
        state = iapws95(np.array(temperature), np.array(density))
        got = [float(x) for x in (state["p"] / 1e6, state["cv"] / 1e3, state["w"], state["s"] / 1e3)]
        for value, expected in zip(got, (p, cv, w, s)):
            assert f"{value:.9g}" == f"{expected:.9g}", (temperature, density, value, expected)


# ---------------------------------------------------------------------------------------- the fit

T_MIDDLE, T_HALF = 348.15, 75.0  # K
P_MIDDLE, P_HALF = 1.25e6, 1.25e6  # Pa
DEGREES = {"A": 11, "B": 7, "C": 2, "H": 8}
TOLERANCE = {"v": 2e-7, "beta": 1.5e-8, "kappa": 2e-4, "h": 1.0, "cp": 5e-5}  # relative; beta in 1/K; h in J/kg
DECIMALS = 12  # a unit of the twelfth decimal of A is 1e-12 of the volume


def chebyshev(low, high, count):
    return (low + high) / 2 - (high - low) / 2 * np.cos(np.pi * np.arange(count) / (count - 1))


def grid(t_low, t_high, n_t, p_low, p_high, n_p):
    t, p = np.meshgrid(chebyshev(t_low, t_high, n_t), chebyshev(p_low, p_high, n_p), indexing="ij")
    return t.ravel(), p.ravel()


def monomials(degree, x, order):
    """Columns d^order/dx^order of x^0 ... x^degree."""
    columns = np.zeros((len(x), degree + 1))
    for i in range(order, degree + 1):
        columns[:, i] = np.prod(np.arange(i - order + 1, i + 1)) * x**(i - order)
    return columns


def design(t, p):
    """Matrices that turn the coefficients (A, B, C, H in a row) into v, dv/dT, dv/dp, h and cp."""
    x, q, column = (t - T_MIDDLE) / T_HALF, (p - P_MIDDLE) / P_HALF, lambda a: a[:, None]
    blocks = {"v": [], "v_t": [], "v_p": [], "h": [], "cp": []}
    for j, name in enumerate("ABC"):
        b, b1, b2 = (monomials(DEGREES[name], x, k) / T_HALF**k * 1e-3 for k in range(3))
        integral = column(q**(j + 1) / (j + 1) * P_HALF)
        blocks["v"].append(b * column(q**j))
        blocks["v_t"].append(b1 * column(q**j))
        blocks["v_p"].append(b * column(j * q**max(j - 1, 0) / P_HALF))
        blocks["h"].append((b - column(t) * b1) * integral)
        blocks["cp"].append(-column(t) * b2 * integral)
    isobar = [monomials(DEGREES["H"], x, k) / T_HALF**k * 1e3 for k in range(2)]
    for name in ("v", "v_t", "v_p"):
        blocks[name].append(np.zeros_like(isobar[0]))
    blocks["h"].append(isobar[0])
    blocks["cp"].append(isobar[1])
    return {name: np.hstack(parts) for name, parts in blocks.items()}


def fit():
    t, p = grid(272.16, 424.15, 151, 0.0, 2.55e6, 13)
    state = liquid(t, p)
    v = 1 / state["rho"]
    target = {"v": v, "v_t": v * state["beta"], "v_p": -v * state["kappa"], "h": state["h"], "cp": state["cp"]}
    accepted = {"v": TOLERANCE["v"] * v, "v_t": TOLERANCE["beta"] * v, "v_p": TOLERANCE["kappa"] * v * state["kappa"],
                "h": TOLERANCE["h"] * np.ones_like(v), "cp": TOLERANCE["cp"] * state["cp"]}
    matrices = design(t, p)
    a = np.vstack([matrices[name] / accepted[name][:, None] for name in target])
    y = np.concatenate([target[name] / accepted[name] for name in target])
    column_norm = np.linalg.norm(a, axis=0)
    weight, best, best_error = np.ones(len(y)), None, np.inf
    for _ in range(60):
        root = np.sqrt(weight)
        c = np.linalg.lstsq(a / column_norm * root[:, None], y * root, rcond=1e-16)[0] / column_norm
        error = np.abs(a @ c - y)
        if error.max() < best_error:
            best, best_error = c, error.max()
        weight = weight * (0.05 + error / error.max())**0.7
        weight = weight / weight.mean()
    return np.round(best, DECIMALS)


def print_coefficients(c):
    start = 0
    for name, degree in DEGREES.items():
        print(name)
        for value in c[start:start + degree + 1]:
            print(f"    {value:.{DECIMALS}f}")
        start += degree + 1


def print_errors(c):
    """Largest and root-mean-square errors over the stated range, split at the saturation line."""
    t, p = grid(273.15, 423.15, 601, 0.0, 2.5e6, 41)
    stable = p >= saturation_pressure(t)
    for title, keep in (("liquid", stable), ("metastable liquid", ~stable)):
        state = {name: values[keep] for name, values in liquid(t, p).items()}
        got = {name: (matrix @ c)[keep] for name, matrix in design(t, p).items()}
        beta, above10 = got["v_t"] / got["v"], t[keep] >= 283.15
        kappa = -got["v_p"] / got["v"]
        errors = {
            "rho, relative": 1 / got["v"] / state["rho"] - 1,
            "beta, 1/K": beta - state["beta"],
            "beta above 10 C, relative": (beta / state["beta"] - 1)[above10],
            "kappa, relative": kappa / state["kappa"] - 1,
            "beta/kappa above 10 C, relative": (beta / kappa / (state["beta"] / state["kappa"]) - 1)[above10],
            "cp, relative": got["cp"] / state["cp"] - 1,
            "h, J/kg": got["h"] - state["h"],
        }
        print(title)
        for name, error in errors.items():
            print(f"    {name:32s} max {np.max(np.abs(error)):8.2e}   rms {np.sqrt(np.mean(error**2)):8.2e}")


def saturation_pressure(t):
    """IAPWS SR1-86(1992), eq. 1, in Pa; used only to tell stable from metastable states."""
    x = 1 - t / T_CRITICAL
    terms = ((1, -7.85951783), (1.5, 1.84408259), (3, -11.7866497), (3.5, 22.6807411), (4, -15.9618719),
             (7.5, 1.80122502))
    return 22.064e6 * np.exp(T_CRITICAL / t * sum(a * x**n for n, a in terms))


TABLE_HEADER = """\
# Liquid water between the nodes of water_check.csv, up to 25 bar, and its metastable states below saturation.
# Source: IAPWS-95 (IAPWS R6-95(2018)). Constructed: printed by gibbs_polynomial_fit.py beside this file.
# Digits: ten significant for rho and h, nine for the others; a second, independent implementation of the release agrees
#   within 1e-12 for rho, 2e-8 for beta, 1e-10 for kappa and cp (relative), and 3e-5 J/kg for h.
# Units: in the column names; pressure absolute; h with the zero of the release. "stable" tells whether the pressure is
#   at least the saturation pressure (IAPWS SR1-86(1992), eq. 1).
# Tolerance: the file itself is good to 1e-7 (relative); a formulation is held to its own stated error.
# Date: 2026-11."""


def print_table():
    """States between the nodes of water_check.csv, up to 25 bar and down into the metastable liquid."""
    print(TABLE_HEADER)
    print("T_K,p_abs_Pa,stable,rho_kg_m3,beta_1_K,kappa_1_Pa,cp_J_kgK,h_J_kg")
    t, p = np.meshgrid([273.15] + [275.65 + 5 * k for k in range(30)] + [423.15],
                       [1e3, 1e5, 2.5e5, 4e5, 6.5e5, 1.1e6, 1.45e6, 1.8e6, 2.15e6, 2.5e6], indexing="ij")
    t, p = t.ravel(), p.ravel()
    state, stable = liquid(t, p), p >= saturation_pressure(t)
    for i in range(len(t)):
        print(f"{t[i]:.2f},{p[i]:.0f},{str(bool(stable[i])).lower()},{state['rho'][i]:.10g},{state['beta'][i]:.9g},"
              f"{state['kappa'][i]:.9g},{state['cp'][i]:.9g},{state['h'][i]:.10g}")


if __name__ == "__main__":
    verify()
    if sys.argv[1:] == ["table"]:
        print_table()
    else:
        coefficients = fit()
        print_coefficients(coefficients)
        print_errors(coefficients)
