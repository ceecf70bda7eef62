"""Equilibrium and transport of burnt gas by Cantera, as a reference for the combustion package.

    python3 cantera_reference.py            writes src/test/resources/combustion/cantera_*.csv
    python3 cantera_reference.py live SEED  prints a few random cases for the live comparison

Species data: Cantera's own nasa_gas.yaml and nasa_condensed.yaml (NASA TM-4513). Those files do not state the standard
pressure of the fits and Cantera then takes 1 atm; the report says 1 bar, and so do the entropies at 298.15 K (N2:
191.609 J/(mol K), the value at 1 bar). Each species is therefore rebuilt here with 1 bar.
Collision figures: gri30.yaml. Run with Cantera on the Python path.
"""
import math
import os
import random
import sys

import cantera as ct
import numpy as np

HERE = os.path.dirname(os.path.abspath(__file__))
OUT = os.path.join(HERE, "..", "resources", "combustion")
BAR = 1e5

# the names that TM-4513 uses for species of fluids/gas that are called otherwise there
RENAMED = {
    "C2H2,acetylene": "C2H2", "C2H3,vinyl": "C2H3", "C3H3,propargyl": "C3H3", "C3H4,propyne": "C3H4",
    "C3H6,propylene": "C3H6", "HCHO,formaldehy": "CH2O", "CHCO,ketyl": "HCCO", "CH2CO,ketene": "CH2CO",
    "CH3CHO,ethanal": "CH3CHO"}
GAS = set("""H H2 O O2 O3 OH H2O HO2 H2O2 C C2 C3 C4 C5 CO CO2 C2O C3O2 CH CH2 CH3 CH4 C2H C2H2 C2H3 C2H4 C2H5 C2H6
C3H3 C3H4 C3H6 C3H8 C4H2 C6H6 HCO CH2O COOH HCOOH CH3O CH2OH CH3OH HCCO CH2CO CH3CHO C2H5OH N N2 N3 NH NH2 NH3 N2H2
N2H4 N3H NO NO2 NO3 N2O N2O3 N2O4 N2O5 HNO HNO2 HNO3 NH2OH CN HCN HNC NCO HNCO CNN NCN C2N2 CCN HCCN CH3CN C4N2
He Ar""".split())
CONDENSED = ["C(gr)", "H2O(L)"]

# atoms per molecule, molar enthalpy of the liquid relative to the elements (J/mol): the handbook's list of storage states
LIQUID = {
    "oxygen": ({"O": 2}, -12979.0),
    "hydrogen": ({"H": 2}, -9012.0),
    "methane": ({"C": 1, "H": 4}, -89233.0),
    "propane": ({"C": 3, "H": 8}, -128228.0),
    "ethanol": ({"C": 2, "H": 6, "O": 1}, -277500.0),
    "rp-1": ({"C": 1, "H": 1.95}, -24717.0),
    "ammonia": ({"N": 1, "H": 3}, -71555.0),
    "hydrazine": ({"N": 2, "H": 4}, 50380.0),
    "mmh": ({"C": 1, "H": 6, "N": 2}, 54200.0),
    "udmh": ({"C": 2, "H": 8, "N": 2}, 48300.0),
    "nitrogen-tetroxide": ({"N": 2, "O": 4}, -19564.0),
    "nitrous-oxide": ({"N": 2, "O": 1}, 65000.0),
    "peroxide": ({"H": 2, "O": 2}, -187780.0),
    "water": ({"H": 2, "O": 1}, -285830.0),
}
MASS = {"H": 1.008e-3, "C": 12.011e-3, "N": 14.007e-3, "O": 15.999e-3, "He": 4.002602e-3, "Ar": 39.95e-3}


def one(name):
    if name == "hydrazine-50":
        return blend(one("hydrazine"), one("udmh"), 0.5)
    if name == "hydrogen-peroxide-98":
        return blend(one("peroxide"), one("water"), 0.02)
    if name == "hydrogen-peroxide-90":
        return blend(one("peroxide"), one("water"), 0.10)
    atoms, enthalpy = LIQUID[name]
    mass = sum(MASS[e] * n for e, n in atoms.items())
    return {e: n / mass for e, n in atoms.items()}, enthalpy / mass


def blend(a, b, fraction):
    atoms = {e: (1 - fraction) * a[0].get(e, 0) + fraction * b[0].get(e, 0) for e in {**a[0], **b[0]}}
    return atoms, (1 - fraction) * a[1] + fraction * b[1]


def rebuilt(species):
    thermo = species.thermo
    copy = ct.Species(RENAMED.get(species.name, species.name), species.composition)
    if isinstance(thermo, ct.NasaPoly2):
        copy.thermo = ct.NasaPoly2(thermo.min_temp, thermo.max_temp, BAR, thermo.coeffs)
    else:
        raise ValueError(species.name)
    return copy


class Model:
    """Gas and condensed phases of some elements."""

    def __init__(self, elements):
        wanted = set(elements)
        gas = [s for s in ct.Species.list_from_file("nasa_gas.yaml")
               if RENAMED.get(s.name, s.name) in GAS and set(s.composition) <= wanted]
        condensed = [s for s in ct.Species.list_from_file("nasa_condensed.yaml")
                     if s.name in CONDENSED and set(s.composition) <= wanted]
        self.gas = ct.Solution(thermo="ideal-gas", species=[rebuilt(s) for s in gas])
        self.gas.basis = "mass"
        self.condensed = {s.name: rebuilt(s).thermo for s in condensed}  # their volume is left out, so no phase is needed

    def equilibrate(self, atoms, t, p):
        """Equilibrium at t and p. Condensed carbon and water by the phase rule: the amount taken out of the gas is that
        at which the gas, solved by Cantera, is just saturated. (Cantera's own multi-phase solvers leave elements out of
        balance at some of these states.) Returns moles per kilogram and h, s, g."""
        amounts = {}
        self.gas_only(atoms, t, p)
        if self.allowed("C(gr)", t) and self.excess_carbon() > 0:
            amounts["C(gr)"] = self.saturate(lambda n: self.without(atoms, n, 0), t, p, atoms["C"], self.excess_carbon)
        if self.allowed("H2O(L)", t) and self.excess_water() > 0:
            most = min(atoms["O"], atoms["H"] / 2)

            def excess():
                return self.excess_water()

            if "C(gr)" in amounts:
                def left(n):
                    amounts["C(gr)"] = self.saturate(
                        lambda c: self.without(atoms, c, n), t, p, atoms["C"], self.excess_carbon)
                    return self.without(atoms, amounts["C(gr)"], n)
            else:
                def left(n):
                    return self.without(atoms, 0, n)
            amounts["H2O(L)"] = self.saturate(left, t, p, most, excess)
        return self.sum_up(atoms, t, p, amounts)

    def allowed(self, name, t):
        return name in self.condensed and t <= self.condensed[name].max_temp

    def without(self, atoms, carbon, water):
        left = dict(atoms)
        left["C"] = left.get("C", 0) - carbon
        left["H"] = left.get("H", 0) - 2 * water
        left["O"] = left.get("O", 0) - water
        return {e: n for e, n in left.items() if n > 0}

    def potential(self, name):
        return self.gas.chemical_potentials[self.gas.species_index(name)]

    def condensed_potential(self, name):
        t = self.gas.T
        return self.condensed[name].h(t) - t * self.condensed[name].s(t)

    def excess_carbon(self):
        if "O" in self.gas.element_names:
            carbon = 2 * self.potential("CO") - self.potential("CO2")
        else:
            carbon = self.potential("CH4") - 2 * self.potential("H2")
        return (carbon - self.condensed_potential("C(gr)")) / (ct.gas_constant * self.gas.T)

    def excess_water(self):
        return (self.potential("H2O") - self.condensed_potential("H2O(L)")) / (
            ct.gas_constant * self.gas.T)

    def saturate(self, left, t, p, most, excess):
        def f(n):
            self.gas_only(left(n), t, p)
            return excess()

        a, b = 0.0, most * (1 - 1e-9)
        fa, fb = f(a), f(b)
        if fb > 0:
            raise ct.CanteraError("no gas left")
        x = a
        for i in range(200):
            x = (a * fb - b * fa) / (fb - fa) if i % 3 else 0.5 * (a + b)
            fx = f(x)
            if abs(fx) < 1e-12 or b - a < 1e-14 * most:
                break
            if fx > 0:
                a, fa = x, fx
            else:
                b, fb = x, fx
        return x

    def gas_only(self, atoms, t, p):
        gas = self.gas
        gas.TPX = t, p, {e: n for e, n in atoms.items() if n > 0}
        gas.equilibrate("TP", solver="element_potential" if t > 900 else "auto", rtol=1e-13, max_steps=100000)
        self.total = sum(atoms.values()) / sum(
            gas.X[j] * sum(gas.n_atoms(j, k) for k in range(gas.n_elements)) for j in range(gas.n_species))

    def sum_up(self, atoms, t, p, amounts):
        gas, total = self.gas, self.total
        h = total * gas.enthalpy_mole / 1000
        s = total * gas.entropy_mole / 1000
        cp = total * gas.cp_mole / 1000
        moles = {gas.species_name(j): total * gas.X[j] for j in range(gas.n_species)}
        for name, n in amounts.items():
            thermo = self.condensed[name]
            h += n * thermo.h(t) / 1000
            s += n * thermo.s(t) / 1000
            cp += n * thermo.cp(t) / 1000
            moles[name] = n
        return {"T": t, "p": p, "h": h, "s": s, "g": h - t * s, "n": total, "cp": cp, "moles": moles}

    def adiabatic(self, atoms, enthalpy, p):
        """Temperature at which equilibrium at p has the enthalpy: by halving in an interval, then secants."""
        low, high = 200.0, 5500.0
        state, f_low, f_high = None, -1e7, 1e7
        for _ in range(9):
            t = 0.5 * (low + high)
            state = self.equilibrate(atoms, t, p)
            if state["h"] > enthalpy:
                high, f_high = t, state["h"] - enthalpy
            else:
                low, f_low = t, state["h"] - enthalpy
        for _ in range(30):
            t = low - f_low * (high - low) / (f_high - f_low)
            t = min(max(t, low + 0.01 * (high - low)), high - 0.01 * (high - low))
            state = self.equilibrate(atoms, t, p)
            f = state["h"] - enthalpy
            if abs(f) < 1e-9 * abs(state["cp"] * t) or high - low < 1e-9 * t:
                return state
            if f > 0:
                high, f_high = t, f
            else:
                low, f_low = t, f
        return state


def closes(state, atoms):
    """Whether the reference itself balances its elements."""
    sums = {}
    for name, n in state["moles"].items():
        for e, k in COMPOSITION[name].items():
            sums[e] = sums.get(e, 0) + n * k
    return all(abs(sums.get(e, 0) - b) < 1e-8 * b for e, b in atoms.items() if b > 0)


COMPOSITION = {}
for file in ("nasa_gas.yaml", "nasa_condensed.yaml"):
    for s in ct.Species.list_from_file(file):
        COMPOSITION[RENAMED.get(s.name, s.name)] = s.composition

MODELS = {}


def model(atoms):
    key = tuple(sorted(e for e, n in atoms.items() if n > 0))
    if key not in MODELS:
        MODELS[key] = Model(key)
    return MODELS[key]


def slopes(m, atoms, state):
    """cp with shifting composition and isentropic exponent, by central differences of equilibrium states."""
    t, p = state["T"], state["p"]
    dt, dp = 2e-4 * t, 2e-4
    up, down = m.equilibrate(atoms, t + dt, p), m.equilibrate(atoms, t - dt, p)
    high, low = m.equilibrate(atoms, t, p * (1 + dp)), m.equilibrate(atoms, t, p * (1 - dp))
    ln_v = lambda q: math.log(q["n"] * q["T"] / q["p"])
    step = math.log((1 + dp) / (1 - dp))
    v_t = (ln_v(up) - ln_v(down)) / (2 * dt / t)
    v_p = (ln_v(high) - ln_v(low)) / step
    cp = (up["h"] - down["h"]) / (2 * dt)
    gamma = -1 / (v_p + v_t ** 2 * state["n"] * ct.gas_constant / 1000 / cp)
    return cp, gamma


def describe(moles, smallest=1e-12):
    total = sum(moles.values())
    rows = sorted(((n / total, s) for s, n in moles.items() if n / total > smallest), reverse=True)
    return ";".join(f"{s}:{x:.12g}" for x, s in rows)


PAIRS = [
    ("oxygen", "hydrogen", (0.7, 2, 6, 30)), ("oxygen", "methane", (0.2, 1, 3.4, 20)),
    ("oxygen", "propane", (0.3, 3, 20)), ("oxygen", "ethanol", (0.3, 1.6, 20)), ("oxygen", "rp-1", (0.35, 2.56, 20)),
    ("oxygen", "ammonia", (0.5, 1.4)), ("oxygen", "hydrazine", (0.3, 0.9)), ("oxygen", "mmh", (0.1, 1.4)),
    ("oxygen", "udmh", (0.1, 1.7)), ("oxygen", "hydrazine-50", (0.1, 1.3)),
    ("nitrogen-tetroxide", "hydrazine", (0.2, 1.34)), ("nitrogen-tetroxide", "mmh", (0.1, 2.15, 30)),
    ("nitrogen-tetroxide", "udmh", (0.15, 2.6)), ("nitrogen-tetroxide", "hydrazine-50", (0.1, 1.62)),
    ("nitrogen-tetroxide", "rp-1", (4.0,)),
    ("nitrous-oxide", "propane", (1.5, 9)), ("nitrous-oxide", "ethanol", (4.5,)), ("nitrous-oxide", "methane", (8,)),
    ("nitrous-oxide", "ammonia", (3,)),
    ("hydrogen-peroxide-98", "rp-1", (1, 7.2)), ("hydrogen-peroxide-90", "ethanol", (4.5,)),
    ("hydrogen-peroxide-90", "methane", (8,)), ("hydrogen-peroxide-98", "mmh", (3,)),
]
ALONE = ["hydrazine", "mmh", "udmh", "hydrogen-peroxide-98", "hydrogen-peroxide-90", "nitrous-oxide"]
PRESSURES = (2e4, 1e6, 1e7, 4e7)
COLUMNS = "case,C,H,N,O,enthalpy,pressure,temperature,gas_moles,enthalpy_check,entropy,frozen_cp,equilibrium_cp,gamma_s,fractions"


def row(name, atoms, enthalpy, p):
    m = model(atoms)
    try:
        state = m.adiabatic(atoms, enthalpy, p)
        cp, gamma = slopes(m, atoms, state)
    except ct.CanteraError:
        return None
    if not closes(state, atoms):
        return None
    figures = [atoms.get(e, 0.0) for e in "CHNO"] + [
        enthalpy, p, state["T"], state["n"], state["h"], state["s"], state["cp"], cp, gamma]
    return name + "," + ",".join(f"{x:.13g}" for x in figures) + "," + describe(state["moles"])


def cases():
    turn = 0
    for oxidizer, fuel, ratios in PAIRS:
        for ratio in ratios:
            for p in (PRESSURES[turn % 4], PRESSURES[(turn + 2) % 4]):
                atoms, enthalpy = blend(one(oxidizer), one(fuel), 1 / (1 + ratio))
                yield f"{oxidizer}/{fuel} at {ratio:g}", atoms, enthalpy, p
            turn += 1
    for name in ALONE:
        atoms, enthalpy = one(name)
        for p in (1e5, 5e6):
            yield f"{name} alone", atoms, enthalpy, p


def write_equilibrium():
    lines = [f"# Cantera {ct.__version__}, nasa_gas.yaml and nasa_condensed.yaml with a standard pressure of 1 bar; SI units;",
             "# atoms in mol/kg, enthalpy in J/kg, gas_moles in mol/kg; written by src/test/python/cantera_reference.py",
             COLUMNS]
    skipped = []
    for case in cases():
        line = row(*case)
        if line is None:
            skipped.append(f"{case[0]} at {case[3]:g} Pa")
        else:
            lines.append(line)
    with open(os.path.join(OUT, "cantera_equilibrium.csv"), "w") as file:
        file.write("\n".join(lines) + "\n")
    print(len(lines) - 3, "cases; without a balanced reference:", skipped)


def transport_model(elements):
    """Gas of those species for which gri30.yaml holds collision figures, with the thermodynamics of TM-4513."""
    figures = {s.name.replace("AR", "Ar"): s.transport for s in ct.Species.list_from_file("gri30.yaml")}
    species = []
    for s in ct.Species.list_from_file("nasa_gas.yaml"):
        name = RENAMED.get(s.name, s.name)
        if name in GAS and name in figures and set(s.composition) <= set(elements):
            copy = rebuilt(s)
            copy.transport = figures[name]
            species.append(copy)
    return ct.Solution(thermo="ideal-gas", kinetics=None, species=species, transport_model="mixture-averaged")


def reacting_conductivity(gas):
    """Butler and Brokaw: one reaction forming each species from a base of independent ones; matrix of their paper with
    Cantera's binary diffusion coefficients."""
    x = gas.X
    chosen = [j for j in np.argsort(-x) if x[j] > 1e-6]
    atoms = np.array([[gas.n_atoms(int(j), k) for k in range(gas.n_elements)] for j in chosen], float)
    base = []
    for i in range(len(chosen)):
        if np.linalg.matrix_rank(atoms[base + [i]]) == len(base) + 1:
            base.append(i)
    others = [i for i in range(len(chosen)) if i not in base]
    alpha = np.zeros((len(others), len(chosen)))
    for r, i in enumerate(others):
        alpha[r, base] = -np.linalg.lstsq(atoms[base].T, atoms[i], rcond=None)[0]
        alpha[r, i] = 1.0
    h = gas.standard_enthalpies_RT[chosen]
    heat = alpha @ h
    d = gas.binary_diff_coeffs[np.ix_(chosen, chosen)]
    xs = x[chosen]
    g = np.zeros((len(others), len(others)))
    for k in range(len(chosen)):
        for l in range(k + 1, len(chosen)):
            v = alpha[:, k] / xs[k] - alpha[:, l] / xs[l]
            g += gas.T / (gas.P * d[k, l]) * xs[k] * xs[l] * np.outer(v, v)
    return float(heat @ np.linalg.solve(g, heat))


def write_transport():
    lines = [f"# Cantera {ct.__version__}: mixture-averaged transport, collision figures of gri30.yaml; SI units; reacting"
             " conductivity by Butler and Brokaw;",
             "# written by src/test/python/cantera_reference.py",
             "case,pressure,temperature,viscosity,conductivity,reacting_conductivity,fractions"]
    picks = [("oxygen", "hydrogen", 0.7), ("oxygen", "hydrogen", 6), ("oxygen", "methane", 3.4), ("oxygen", "methane", 0.5),
             ("oxygen", "rp-1", 2.56), ("nitrogen-tetroxide", "mmh", 2.15), ("nitrous-oxide", "ethanol", 4.5),
             ("hydrogen-peroxide-98", "rp-1", 7.2), ("oxygen", "ammonia", 1.4), ("oxygen", "methane", 30)]
    for oxidizer, fuel, ratio in picks:
        atoms, enthalpy = blend(one(oxidizer), one(fuel), 1 / (1 + ratio))
        gas = transport_model([e for e, n in atoms.items() if n > 0])
        for p in (1e5, 1e7):
            for t in (500.0, 1000.0, 2000.0, 3000.0, 3800.0):
                gas.TPX = t, p, atoms
                gas.equilibrate("TP", solver="element_potential" if t > 900 else "auto", rtol=1e-12, max_steps=100000)
                fractions = {gas.species_name(j): gas.X[j] for j in range(gas.n_species)}
                lines.append(f"{oxidizer}/{fuel} at {ratio:g},{p:g},{t:g},{gas.viscosity:.8g},"
                             f"{gas.thermal_conductivity:.8g},{reacting_conductivity(gas):.8g},{describe(fractions, 1e-9)}")
    for name in ("H2", "O2", "N2", "H2O", "CO2", "CO", "CH4", "NH3", "H", "O", "OH", "NO", "Ar"):
        gas = transport_model(["C", "H", "N", "O", "Ar"])
        for t in (300.0, 1000.0, 3000.0):
            gas.TPX = t, 1e5, {name: 1}
            lines.append(f"{name} alone,1e5,{t:g},{gas.viscosity:.8g},{gas.thermal_conductivity:.8g},0,{name}:1")
    with open(os.path.join(OUT, "cantera_transport.csv"), "w") as file:
        file.write("\n".join(lines) + "\n")
    print(len(lines) - 3, "cases of transport")


def live(seed):
    chance = random.Random(seed)
    done = 0
    print(COLUMNS)
    while done < 5:
        oxidizer, fuel, _ = chance.choice(PAIRS)
        ratio = 10 ** chance.uniform(-0.7, 1.5)
        p = 10 ** chance.uniform(4, 7.7)
        atoms, enthalpy = blend(one(oxidizer), one(fuel), 1 / (1 + ratio))
        line = row(f"{oxidizer}/{fuel} at {ratio:.4g}", atoms, enthalpy, p)
        if line:
            print(line)
            done += 1


if __name__ == "__main__":
    if len(sys.argv) > 2 and sys.argv[1] == "live":
        live(int(sys.argv[2]))
    else:
        write_equilibrium()
        write_transport()
