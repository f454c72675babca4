"""Writes finite_elements.tsv beside this file, with scikit-fem.

    cargo site bench elements

does it all: it draws the details anew as problem files beside this one (example detail_problems of
inchwise-core), installs the packages, and runs this script.

A second discretisation of the same problems: continuous finite elements, quadratic on quadrilaterals
in two dimensions (on triangles where a face slopes, on quadrilaterals bent along the faces where foam
follows a waving sheet) and trilinear on hexahedra in three, on meshes of
this script's own that crowd towards every face of a material; surface resistances as Robin conditions.
The engine's way is cells and balances. Of each problem the mesh is halved once, which tells the
elements' own error.
"""

import datetime
import json
import math
from importlib.metadata import version
from pathlib import Path
from time import perf_counter

import numpy
import pyamg
import skfem
from scipy.sparse.linalg import spsolve
from skfem.helpers import dot, grad

HERE = Path(__file__).parent
SIDES = {"x": 0, "y": 1, "z": 2}
# Millimetres beside a face, growth from one element to the next, widest element; then about halved.
MESHES = {2: [(0.4, 1.25, 40.0), (0.2, 1.12, 20.0)], 3: [(4.8, 2.1, 240.0), (2.4, 1.45, 120.0)]}


# A metre from the origin double precision tells points of an element 0.2 mm wide apart to 1e-12 of its
# width, no closer than skfem wants to find them.
skfem.MappingIsoparametric.invF.__defaults__ = (None, 50, 1e-10)


class Box:
    def __init__(self, entry):
        self.low, self.high = numpy.array(entry["from"]), numpy.array(entry["to"])

    def edges(self):
        (x0, y0), (x1, y1) = self.low, self.high
        return [((x0, y), (x1, y)) for y in (y0, y1)]

    def holds(self, points):
        inside = (points > self.low[:, None]) & (points < self.high[:, None])
        return inside.all(axis=0)


class Prism:
    """A polygon of a section. Its sloping edges run along the diagonals of a lattice of the mesh."""

    def __init__(self, entry):
        self.outline = numpy.array(entry["outline"])

    @property
    def low(self):
        return self.outline.min(axis=0)

    @property
    def high(self):
        return self.outline.max(axis=0)

    def edges(self):
        return zip(self.outline, numpy.roll(self.outline, -1, axis=0))

    def slopes(self):
        return [(a, b) for a, b in self.edges() if (a != b).all()]

    def holds(self, points):
        inside = numpy.zeros(points.shape[1], dtype=bool)
        for (x0, y0), (x1, y1) in self.edges():
            if y0 != y1:
                crosses = (y0 > points[1]) != (y1 > points[1])
                inside ^= crosses & (points[0] < x0 + (x1 - x0) * (points[1] - y0) / (y1 - y0))
        return inside


def height(corners, x):
    (x0, y0), (x1, y1) = corners
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0)


def shape(entry):
    return Box(entry["block"]) if "block" in entry else Prism(entry["prism"])


class Problem:
    def __init__(self, path):
        file = json.loads(path.read_text())
        assert file["lengths_in"] == "mm"
        self.dimensions = file["dimensions"]
        self.domain = Box(file["domain"])
        assert "background" not in file and "finishes" not in file
        self.paints = [(shape(paint), paint["conductivity"]) for paint in file["paints"]]
        # Paints win over what surrounds them, and air cut out wins over paints.
        self.surroundings = [(shape(air), air) for air in file.get("surroundings", [])]
        self.cut_out = [(shape(air), air) for air in file["air"]]
        self.air = self.surroundings + self.cut_out
        self.exposed = {exposed["side"]: exposed for exposed in file["exposed"]}

    def slopes(self):
        prisms = [it for it, _ in self.paints + self.air if isinstance(it, Prism)]
        return [slope for prism in prisms for slope in prism.slopes()]

    def bends(self):
        """Whether slopes are not all as high, so that no lattice meets them: foam that follows a sheet."""
        return len({round(abs(a[1] - b[1]), 6) for a, b in self.slopes()}) > 1

    def faces_across(self, low, high):
        """The faces between two upright lines, from below, as heights at both."""
        edges = [edge for it, _ in self.paints + self.cut_out for edge in it.edges()]
        spans = [edge for edge in edges if min(edge[0][0], edge[1][0]) <= low + 1e-5]
        spans = [edge for edge in spans if max(edge[0][0], edge[1][0]) >= high - 1e-5]
        spans = [edge for edge in spans if abs(edge[0][0] - edge[1][0]) > 1e-9]
        found = sorted((height(edge, low), height(edge, high)) for edge in spans)
        apart = [found[0]] + [b for a, b in zip(found, found[1:]) if max(b[0] - a[0], b[1] - a[1]) > 1e-6]
        return numpy.array(apart).T

    def lattice(self, axis, finer):
        """Lines on which every sloping edge meets the lattice's corners: all slopes are as high and
        stand apart by whole steps, so that a step that measures both heights will do."""
        slopes = self.slopes()
        if not slopes:
            return numpy.array([])
        heights = [round(1e6 * abs(c)) for a, b in slopes for c in (a[1] - b[1], a[1] - slopes[0][0][1])]
        step = math.gcd(*heights) / finer / 1e6
        found = []
        for a, b in slopes:
            pieces = round(abs(a[1] - b[1]) / step)
            found.extend(numpy.linspace(a[axis], b[axis], pieces + 1))
        return numpy.array(found)

    def breaks(self, axis, finer=1):
        """Lines that the mesh must have, and of the gaps between them those that stay whole."""
        boxes = [self.domain] + [box for box, _ in self.paints + self.air]
        faces = [c for box in boxes for c in (box.low[axis], box.high[axis])]
        lattice = self.lattice(axis, finer)
        found = numpy.unique(numpy.round(numpy.concatenate([faces, lattice]), 9))
        low, high = self.domain.low[axis], self.domain.high[axis]
        found = found[(found >= low) & (found <= high)]
        spans = [sorted((a[axis], b[axis])) for a, b in self.slopes()]
        middles = (found[1:] + found[:-1]) / 2
        whole = [any(low < middle < high for low, high in spans) for middle in middles]
        return found, whole

    def conductivity(self, points):
        found = numpy.full(points.shape[1], numpy.nan)
        for box, conductivity in self.paints:
            found[box.holds(points)] = conductivity
        assert not numpy.isnan(found).any(), "a place that is neither painted nor air"
        return found

    def air_at(self, points):
        """The number of the air region at each point; -1 in matter."""
        found = numpy.full(points.shape[1], -1)
        for n, (box, _) in enumerate(self.surroundings):
            found[box.holds(points)] = n
        for box, _ in self.paints:
            found[box.holds(points)] = -1
        for n, (box, _) in enumerate(self.cut_out):
            found[box.holds(points)] = len(self.surroundings) + n
        return found

    def surface(self, region, side):
        """Environment and surface resistance of a face that looks along `side`; None: no heat."""
        if region < 0:
            exposed = self.exposed.get(side)
            return exposed and (exposed["environment"], exposed["surface_resistance"])
        air = self.air[region][1]
        resistance = air["surface_resistance"]
        for entry in air.get("surface_resistance_by_side", []):
            if entry["side"] == side:
                resistance = entry["surface_resistance"]
        return air["environment"], resistance


def lines(breaks, whole, finest, growth, widest):
    """Mesh lines through all breaks, narrow beside each and growing away from it."""
    found = [breaks[0]]
    for low, high, is_whole in zip(breaks, breaks[1:], whole):
        if is_whole:
            found.append(high)
            continue
        length = high - low
        steps, half, step = [], 0.0, finest
        while half + step < length / 2:
            steps.append(step)
            half += step
            step = min(step * growth, widest)
        steps = steps + [step] if length / 2 - half > 0.4 * step or not steps else steps
        both = numpy.array(steps + steps[::-1])
        found.extend(low + numpy.cumsum(both) * (length / both.sum()))
        found[-1] = high
    return numpy.array(found)


def triangles(quads, slopes):
    """Each quadrilateral of a tensor mesh cut in two, along the sloping edge where one crosses it."""
    corners = quads.p[:, quads.t]
    middle = corners.mean(axis=1)
    falls = numpy.zeros(quads.t.shape[1], dtype=bool)
    for a, b in slopes:
        within = (middle[0] > min(a[0], b[0])) & (middle[0] < max(a[0], b[0]))
        falls |= within & ((b[1] - a[1]) / (b[0] - a[0]) < 0)
    # The corners of each in the order low left, low right, high right, high left.
    order = numpy.lexsort((corners[0], corners[1]), axis=0)
    low_left, low_right, high_left, high_right = numpy.take_along_axis(quads.t, order, axis=0)
    rising = [(low_left, low_right, high_right), (low_left, high_right, high_left)]
    falling = [(low_left, low_right, high_left), (low_right, high_right, high_left)]
    cut = [numpy.where(falls, f, r) for r, f in zip(rising, falling)]
    return skfem.MeshTri(quads.p, numpy.hstack(cut))


def layered(problem, mesh_sizes):
    """Quadrilaterals between upright lines, bent along the faces that run from cut to cut."""
    shapes = [it for it, _ in problem.paints + problem.cut_out]
    corners = [corner[0] for it in shapes for edge in it.edges() for corner in edge]
    breaks = numpy.unique(numpy.round(corners, 6))
    faces = [problem.faces_across(low, high) for low, high in zip(breaks, breaks[1:])]
    assert len({len(face[0]) for face in faces}) == 1, "a face that ends between the cuts"
    for before, after in zip(faces, faces[1:]):
        assert numpy.abs(before[1] - after[0]).max() < 1e-4, "a face that jumps"
    at_breaks = numpy.array([face[0] for face in faces] + [faces[-1][1]])
    depths = numpy.diff(at_breaks, axis=1).max(axis=0)
    assert numpy.diff(at_breaks, axis=1).min() > 1e-3, "a layer that ends"
    columns = lines(breaks, [False] * len(faces), *mesh_sizes)
    heights = numpy.array([numpy.interp(columns, breaks, face) for face in at_breaks.T])
    rows = []
    for low, high, depth in zip(heights, heights[1:], depths):
        shares = lines(numpy.array([0.0, depth]), [False], *mesh_sizes)[:-1] / depth
        rows.extend(low + share * (high - low) for share in shares)
    rows.append(heights[-1])
    y = numpy.array(rows)
    points = numpy.array([numpy.broadcast_to(columns, y.shape).ravel(), y.ravel()])
    number = numpy.arange(y.size).reshape(y.shape)
    quads = [number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1]]
    return skfem.MeshQuad(points, numpy.array([corner.ravel() for corner in quads]))


def meshed(problem, mesh_sizes, finer):
    """The mesh, air and all, and the elements on it with those that a conductivity is constant on."""
    if problem.bends():
        return layered(problem, mesh_sizes), skfem.ElementQuad2(), skfem.ElementQuad0()
    d = problem.dimensions
    grid = [lines(*problem.breaks(axis, finer), *mesh_sizes) for axis in range(d)]
    whole = (skfem.MeshQuad if d == 2 else skfem.MeshHex).init_tensor(*grid)
    slopes = problem.slopes()
    if slopes:
        return triangles(whole, slopes), skfem.ElementTriP2(), skfem.ElementTriP0()
    if d == 2:
        return whole, skfem.ElementQuad2(), skfem.ElementQuad0()
    return whole, skfem.ElementHex1(), skfem.ElementHex0()


def solve(problem, mesh_sizes, finer):
    """Coupling of room and outdoors (W/K or W/(m K)), lowest factor on the room's surfaces, nodes."""
    d = problem.dimensions
    whole, element, constant = meshed(problem, mesh_sizes, finer)
    middles = whole.p[:, whole.t].mean(axis=1)
    mesh = whole.restrict(numpy.flatnonzero(problem.air_at(middles) < 0))
    middles = mesh.p[:, mesh.t].mean(axis=1)
    basis = skfem.Basis(mesh, element, intorder=4 if d == 2 else 2)

    @skfem.BilinearForm
    def conduction(u, v, w):
        return w["conductivity"] * dot(grad(u), grad(v))

    constant = basis.with_element(constant)
    conductivity = constant.zeros()
    conductivity[constant.element_dofs[0]] = problem.conductivity(middles)
    # In metres: a section's conductances do not depend on the unit of length, a body's do.
    scale = 1e-3 if d == 3 else 1.0
    matrix = scale * conduction.assemble(basis, conductivity=constant.interpolate(conductivity))

    facets = mesh.boundary_facets()
    at = mesh.p[:, mesh.facets[:, facets]].mean(axis=1)
    outwards = at - middles[:, mesh.f2t[0, facets]]
    # A facet is square to the axis along which its corners do not spread, or nearest to that.
    spread = numpy.ptp(mesh.p[:, mesh.facets[:, facets]], axis=1)
    axis, each = spread.argmin(axis=0), numpy.arange(len(facets))
    # The sides of a bent element lie straight above one another, whichever way they slope.
    axis = numpy.where(numpy.abs(outwards[axis, each]) > 1e-9, axis, numpy.abs(outwards).argmax(axis=0))
    sign = numpy.sign(outwards[axis, each])
    beyond = at.copy()
    beyond[axis, each] += 1e-4 * sign
    regions = problem.air_at(beyond)
    low, high = problem.domain.low[:, None], problem.domain.high[:, None]
    is_outside = ((beyond < low) | (beyond > high)).any(axis=0)
    groups = {}
    for n, facet in enumerate(facets):
        side = "xyz"[axis[n]] + ("_maximum" if sign[n] > 0 else "_minimum")
        assert is_outside[n] or regions[n] >= 0, "a face that looks at nothing"
        surface = problem.surface(-1 if is_outside[n] else regions[n], side)
        if surface:
            groups.setdefault(surface, []).append(facet)

    @skfem.BilinearForm
    def exchange(u, v, w):
        return u * v

    @skfem.LinearForm
    def supply(v, w):
        return 1.0 * v

    # Millimetres of edge or square millimetres of face over m2 K/W.
    area = 1e-3 if d == 2 else 1e-6
    heat = basis.zeros()
    out = basis.zeros()
    for (environment, resistance), found in groups.items():
        surface = basis.boundary(numpy.array(found))
        matrix = matrix + (area / resistance) * exchange.assemble(surface)
        into = (area / resistance) * supply.assemble(surface)
        if environment == "room":
            heat += into
        else:
            out += into
    if d == 2:
        factor = spsolve(matrix.tocsc(), heat)
    else:
        levels = pyamg.smoothed_aggregation_solver(matrix.tocsr(), symmetry="symmetric")
        factor = levels.solve(heat, tol=1e-10, accel="cg", maxiter=4000)
    left_over = numpy.linalg.norm(heat - matrix @ factor) / numpy.linalg.norm(heat)
    assert left_over < 1e-8, left_over
    coupling = out @ factor
    assert abs(heat.sum() - heat @ factor - coupling) < 1e-6 * coupling, "heat is not conserved"
    rooms = [f for (environment, _), found in groups.items() if environment == "room" for f in found]
    nodes = basis.get_dofs(numpy.array(rooms)).all()
    return coupling, factor[nodes].min(), len(factor)


def main():
    rows = []
    for name in ["stud", "stud_over_trough", "front_end_wave", "floor_edge", "top_casting"]:
        found = {}
        for purpose in ["heat", "damp"]:
            problem = Problem(HERE / f"{name}_{purpose}.json")
            for fineness, sizes in enumerate(MESHES[problem.dimensions]):
                start = perf_counter()
                found[purpose, fineness] = solve(problem, sizes, 1 + fineness)
                coupling, factor, nodes = found[purpose, fineness]
                print(
                    f"{name} {purpose}: {nodes} nodes, coupling {coupling:.6f}, lowest factor "
                    f"{factor:.5f}, {perf_counter() - start:.1f} s",
                    flush=True,
                )
        (coarse, fine) = (found["heat", 0], found["heat", 1])
        (coarse_damp, fine_damp) = (found["damp", 0], found["damp", 1])
        rows.append(
            [
                name,
                str(fine[2]),
                f"{fine[0]:.6g}",
                f"{-30 + 50 * fine_damp[1]:.3f}",
                f"{100 * (coarse[0] / fine[0] - 1):.2f}",
                f"{50 * (coarse_damp[1] - fine_damp[1]):.3f}",
            ]
        )
    columns = ["detail", "nodes", "coupling", "lowest_surface_c", "halving_percent", "halving_kelvin"]
    text = f"""\
# source: finite elements by scikit-fem {version('scikit-fem')} on the problem files beside this one, which carry the details as drawn: a stud, the same over a trough of the sheet, a wave of the front end with foam that follows it, the foot of a side wall and a covered casting of the default design; coupling in W/(m K) of a section and W/K of a body with the surfaces for heat, lowest temperature of the room's surfaces at 20 and -30 C with those for damp; the last columns say what halving the mesh had changed
# edition: scikit-fem {version('scikit-fem')}, SciPy {version('scipy')}, PyAMG {version('pyamg')}, written {datetime.date.today().isoformat()} by make_table.py
# tolerance: coupling 0.01 relative
# tolerance: lowest_surface_c 0.2 absolute
# why: one per cent and a fifth of a kelvin at 50 K are what two discretisations of a thermal bridge owe one another; the elements' own error is a few times less
"""
    text += "\n".join("\t".join(row) for row in [columns, *rows]) + "\n"
    (HERE / "finite_elements.tsv").write_text(text)


if __name__ == "__main__":
    main()
