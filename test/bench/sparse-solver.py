"""Times scipy's sparse direct solver on a matrix given by its band, and says how far its answers are from those given.

argv: rounds, size, half width, number of loads, file of float64: band row by row (diagonal last), loads, answers.
Prints JSON: the milliseconds of each round and the largest relative difference.
"""

import json
import sys
import time

import numpy
import scipy.sparse
import scipy.sparse.linalg

rounds, size, half_width, count = (int(word) for word in sys.argv[1:5])
numbers = numpy.fromfile(sys.argv[5])
band = numbers[: size * (half_width + 1)].reshape(size, half_width + 1)
loads, answers = numbers[band.size :].reshape(2, count, size)
diagonals = [band[shift:, half_width - shift] for shift in range(half_width + 1)]
below = scipy.sparse.diags(diagonals, [-shift for shift in range(half_width + 1)], format="csc")
matrix = (below + scipy.sparse.tril(below, -1).T).tocsc()
matrix.eliminate_zeros()
right = numpy.asfortranarray(loads.T)

milliseconds = []
for _ in range(rounds + 2):
    start = time.perf_counter()
    found = scipy.sparse.linalg.splu(matrix).solve(right)
    milliseconds.append(1000 * (time.perf_counter() - start))
difference = abs(found.T - answers).max() / abs(answers).max()
print(json.dumps({"milliseconds": milliseconds[2:], "difference": difference}))
