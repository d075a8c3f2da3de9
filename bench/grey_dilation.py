"""The field of LineKernelBench under a general array library's grey dilation: rests a second, per pixel.

Run it beside the bench: /usr/bin/python3 bench/grey_dilation.py (needs NumPy and SciPy). A strip of the field is dilated, since the library
looks at every pixel of it: lines of samples lie ten rows apart, so a tenth of the rate is what a raster is served.
"""
import time

import numpy
import scipy
from scipy.ndimage import grey_dilation

CELL, COLUMNS, ROWS, STRIP = 0.1, 1300, 600, 30


def back(columns, rows):
    x, y = numpy.meshgrid(CELL * numpy.arange(columns), CELL * (numpy.arange(rows) - rows // 2))
    half, deep = 21 + 7 * x / 520, 20 + 3 * x / 520
    height = deep * numpy.sqrt(numpy.maximum(0, 1 - 0.9 * (y / half) ** 2))
    return numpy.where(abs(y) > half, -1e9, height).astype(numpy.float32)


def cutter(radius, tip, angle):
    reach = int(radius / CELL)
    x, y = numpy.meshgrid(*[CELL * numpy.arange(-reach, reach + 1)] * 2)
    d = numpy.hypot(x, y)
    ball = tip - numpy.sqrt(numpy.maximum(0, tip**2 - d**2))
    if angle == 0:
        height = ball
    else:
        touch = tip * numpy.cos(angle)
        height = numpy.where(d <= touch, ball, tip * (1 - numpy.sin(angle)) + (d - touch) / numpy.tan(angle))
    return d <= radius, -height.astype(numpy.float32)


field = back(COLUMNS, ROWS)[ROWS // 2 - STRIP // 2:ROWS // 2 + STRIP // 2]
print(f"scipy {scipy.__version__}, numpy {numpy.__version__}")
for name, form in [("BallEnd", cutter(6.35, 6.35, 0)), ("TaperedBallEnd", cutter(3.175, 0.8, numpy.radians(5.4)))]:
    footprint, structure = form
    start = time.thread_time()
    grey_dilation(field, footprint=footprint, structure=structure, mode="nearest")
    rate = field.size / (time.thread_time() - start)
    print(f"{name}: {footprint.sum()} cells, {rate / 1e6:.4f} M rests a second per pixel, {rate / 1e7:.5f} M per sample a raster asks for")
