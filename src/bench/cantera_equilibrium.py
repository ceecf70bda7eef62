"""Times Cantera's equilibrate('HP') on the cases of EquilibriumBenchmark: liquid methane and oxygen at 10 MPa, species and
coefficients read from fluids/gas. Run from the project folder with Cantera on the Python path (Python 3.11 or later)."""
import glob
import time
import tomllib

import cantera as ct

ATOMS = {"C", "H", "O"}
species = []
for path in sorted(glob.glob("fluids/gas/*.toml")):
    with open(path, "rb") as file:
        for entry in tomllib.load(file)["species"]:
            if entry["phase"] != "gas" or not set(entry["atoms"]) <= ATOMS:
                continue
            t, a = entry["temperatures_K"], entry["coefficients"]
            s = ct.Species(entry["name"], entry["atoms"])
            s.thermo = ct.NasaPoly2(t[0], t[2], 1e5, [t[1], *a[7:14], *a[0:7]])
            species.append(s)
gas = ct.Solution(thermo="ideal-gas", kinetics=None, species=species)

MASS_O2, MASS_CH4 = 31.998e-3, 16.043e-3


def mixture(ratio):
    enthalpy = (ratio * -12979 / MASS_O2 - 89233 / MASS_CH4) / (1 + ratio)
    return f"O2:{ratio}, CH4:1", enthalpy


def best(run, count, repeats=7):
    times = []
    for _ in range(repeats):
        start = time.process_time()
        for i in range(count):
            run(i)
        times.append((time.process_time() - start) / count)
    return min(times) * 1e6


fractions, enthalpy = mixture(3.4)
p = 10e6
gas.TPY = 3000, p, fractions
gas.equilibrate("TP")


def warm(i):
    gas.HP = enthalpy, p if i % 2 else 0.8 * p
    gas.equilibrate("HP")


products = []
for k in range(8):
    ratio = 3.0 + 0.1 * k
    carbon, oxygen = 1 / MASS_CH4, 2 * ratio / MASS_O2
    products.append((mixture(ratio)[1], {"CO": carbon, "H2O": 2 * carbon, "O2": (oxygen - 3 * carbon) / 2}))


def from_products(i):
    h, x = products[i % 8]
    gas.TPX = 3000, p, x
    gas.HP = h, p
    gas.equilibrate("HP")


print(f"Cantera {ct.__version__}, {gas.n_species} species; microseconds of processor time, best of 7")
print(f"warm, alternating pressure        {best(warm, 400):8.1f}")
print(f"from unreacted likely products    {best(from_products, 400):8.1f}")
