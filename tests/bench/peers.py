"""General-purpose solvers of PyPI on the benchmark's matrices, on one thread.

    peers.py FOLDER

reads `METHOD CASE` per line and answers, tab-separated: milliseconds from matrix to answer,
iterations (a dash where there are none), relative residual, coupling. The matrices are those that
the example conduction_bench of inchwise-core writes.
"""

import sys
from pathlib import Path
from time import perf_counter

import numpy
import pyamg
from scipy.sparse import csr_matrix
from scipy.sparse.linalg import splu

RESIDUAL = 1e-8


def read(path):
    data = path.read_bytes()
    rows, entries = (int(n) for n in numpy.frombuffer(data, "<u8", 2))
    at = 16

    def take(kind, count):
        nonlocal at
        found = numpy.frombuffer(data, kind, count, at)
        at += found.nbytes
        return found

    starts = take("<u8", rows + 1).astype(numpy.int32)
    columns = take("<u4", entries).astype(numpy.int32)
    matrix = csr_matrix((take("<f8", entries), columns, starts), shape=(rows, rows))
    return matrix, take("<f8", rows), take("<f8", rows)


def multigrid(build):
    def solve(matrix, heat):
        history = []
        levels = build(matrix)
        answer = levels.solve(heat, tol=RESIDUAL, accel="cg", maxiter=500, residuals=history)
        return answer, len(history) - 1

    return solve


def superlu(matrix, heat):
    # Symmetric, positive definite: no pivoting, and an ordering made for such.
    factors = splu(
        matrix.tocsc(),
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )
    return factors.solve(heat), "-"


METHODS = {
    "ruge_stueben": multigrid(pyamg.ruge_stuben_solver),
    # Smoothed aggregation as PyAMG advises for symmetric matrices.
    "smoothed_aggregation": multigrid(
        lambda matrix: pyamg.smoothed_aggregation_solver(matrix, symmetry="symmetric")
    ),
    "superlu": superlu,
}


def main():
    folder = Path(sys.argv[1])
    known = (None, None)
    for line in sys.stdin:
        method, name = line.split()
        if known[0] != name:
            known = (name, read(folder / f"{name}.csr"))
        matrix, heat, measure = known[1]
        start = perf_counter()
        answer, iterations = METHODS[method](matrix, heat)
        elapsed = 1000 * (perf_counter() - start)
        residual = numpy.linalg.norm(heat - matrix @ answer) / numpy.linalg.norm(heat)
        print(f"{elapsed}\t{iterations}\t{residual:e}\t{float(measure @ answer)!r}", flush=True)


main()
