#!/usr/bin/env python3
"""Laminar flow through an isosceles triangular groove, width 1, depth s, closed by a flat lid: finite elements.

Solves -div grad u = 1, u = 0 on all three sides, and prints the integral F of u (flow = F b^4 dp/(mu l), b the width) and the
share F/(s^3/48) of the thin law. Linear elements on a uniform mesh mapped to the triangle, three meshes, extrapolated twice.
Anchors: the equilateral triangle is exactly sqrt(3)/320; a thin groove tends to 1.
"""
import platform

import numpy as np
import scipy
import scipy.sparse as sp
from scipy.sparse.linalg import spsolve


def integral(s, n):
    """F on a mesh of n^2 triangles; corners (0,0), (1,0), (1/2,s)."""
    number = {}
    for j in range(n + 1):
        for i in range(n + 1 - j):
            number[i, j] = len(number)
    xy = np.array([((i + j / 2) / n, s * j / n) for (i, j) in number])
    inner = np.array([0 < i and 0 < j and i + j < n for (i, j) in number])
    up = [(number[i, j], number[i + 1, j], number[i, j + 1]) for j in range(n) for i in range(n - j)]
    down = [(number[i + 1, j], number[i + 1, j + 1], number[i, j + 1]) for j in range(n - 1) for i in range(n - 1 - j)]
    t = np.array(up + down)
    p = xy[t]
    edges = np.stack([p[:, 2] - p[:, 1], p[:, 0] - p[:, 2], p[:, 1] - p[:, 0]], axis=1)
    area = 0.5 * np.abs(edges[:, 0, 0] * edges[:, 1, 1] - edges[:, 0, 1] * edges[:, 1, 0])
    local = np.einsum("eik,ejk->eij", edges, edges) / (4 * area)[:, None, None]
    rows, cols = np.repeat(t, 3, axis=1).ravel(), np.tile(t, (1, 3)).ravel()
    stiff = sp.csr_matrix((local.ravel(), (rows, cols)), shape=(len(xy), len(xy)))
    load = np.zeros(len(xy))
    np.add.at(load, t.ravel(), np.repeat(area / 3, 3))
    u = np.zeros(len(xy))
    u[inner] = spsolve(stiff[inner][:, inner].tocsc(), load[inner])
    return float(u @ load)


def extrapolated(s):
    a, b, c = (integral(s, n) for n in (60, 120, 240))
    first, second = (4 * b - a) / 3, (4 * c - b) / 3
    return (16 * second - first) / 15, abs(second - first)


def main():
    exact = 3**0.5 / 320
    found = extrapolated(3**0.5 / 2)[0]
    print(f"equilateral: {found:.9e}, exact {exact:.9e}, off {abs(found / exact - 1):.1e}")
    for s in (0.02, 0.05, 0.075, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.45, 0.5, 0.6, 0.7, 0.8, 3**0.5 / 2, 0.9, 1.0, 1.5, 2.0):
        f, change = extrapolated(s)
        print(f"depth/width {s:.6f}   F {f:.6e}   factor {f / (s**3 / 48):.6f}   last change {change / f:.1e}")
    print(f"python {platform.python_version()}, numpy {np.__version__}, scipy {scipy.__version__}")


main()
