"""Writes kappa.csv: quadratic-weighted kappa and its standard error from a program that is not this one.

Debian package python3-statsmodels, run as:  /usr/bin/python3 test/reference/tables/kappa.py > test/reference/tables/kappa.csv
The tables are invented; the last ones are at the edges: two grades, unused grades, one disagreement, worse than chance.
"""

import random

import numpy
import statsmodels
from statsmodels.stats.inter_rater import cohens_kappa

NUMBER = random.Random(20260317)


def graded(k, n, spread):
    """Two observers who see the same thing and are off by up to `spread` grades."""
    table = [[0] * k for _ in range(k)]
    for _ in range(n):
        seen = NUMBER.randrange(k)
        pair = [min(k - 1, max(0, seen + NUMBER.randint(-spread, spread))) for _ in range(2)]
        table[pair[0]][pair[1]] += 1
    return table


TABLES = [graded(k, n, spread) for k in (5, 4, 3) for n, spread in ((12, 1), (30, 1), (60, 2), (200, 1), (1000, 3))]
TABLES += [
    [[20, 20], [10, 50]],
    [[46, 0, 0], [4, 40, 0], [0, 0, 10]],
    [[0, 4, 1], [0, 8, 0], [0, 1, 5]],
    [[9, 1, 0, 0, 0], [0, 0, 0, 0, 0], [0, 0, 7, 0, 0], [0, 0, 0, 0, 0], [0, 0, 0, 0, 3]],
    [[0, 0, 0, 0, 6], [0, 0, 0, 0, 0], [0, 0, 2, 0, 0], [0, 0, 0, 0, 0], [5, 0, 0, 0, 0]],
    [[1, 0, 0, 0, 0], [0, 0, 0, 0, 0], [0, 0, 1, 1, 0], [0, 0, 0, 0, 0], [0, 0, 0, 0, 0]],
    [[18, 1, 0, 0, 0], [1, 0, 0, 0, 0], [0, 0, 0, 0, 0], [0, 0, 0, 0, 0], [0, 0, 0, 0, 0]],
    [[2, 3, 1, 0, 0], [1, 4, 2, 1, 0], [0, 2, 6, 3, 0], [0, 0, 3, 5, 1], [0, 0, 1, 2, 3]],
    [[0, 3, 0], [2, 0, 1], [0, 4, 0]],
    [[300, 40, 2, 0], [35, 250, 30, 1], [3, 28, 210, 25], [0, 2, 31, 180]],
]

print(f"# statsmodels {statsmodels.__version__}, statsmodels.stats.inter_rater.cohens_kappa(table, wt='quadratic')")
print(f"# numpy {numpy.__version__}; kappa to 12 significant digits; std_kappa to 9, since its two squares cancel")
print("# /usr/bin/python3 test/reference/tables/kappa.py > test/reference/tables/kappa.csv")
print("# counts: rows of the table parted by |, columns by spaces; rows first observer")
print("counts,kappa,standard_error")
for table in TABLES:
    found = cohens_kappa(numpy.array(table), wt="quadratic")
    counts = "|".join(" ".join(str(count) for count in row) for row in table)
    print(f"{counts},{found.kappa:#.12g},{found.std_kappa:#.9g}")
