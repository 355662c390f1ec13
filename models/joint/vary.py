#!/usr/bin/env python3
"""Varies pictures with exact truth, so that the judgement is fitted on more cameras than were rendered.

    python3 models/joint/vary.py FROM_FOLDER TO_FOLDER VARIANTS [SEED [FIRST]]

Variant 0 is the picture as it is; odd ones are mirrored; from 1 on each is shrunk, blurred, darkened
or brightened (gamma, gain, gradient), tinted, made noisy and compressed by chance, seeded. Truth is
carried along. FIRST is the number of the first variant, 0 unless stated. Needs numpy and OpenCV; the program itself does not.
"""
import copy
import glob
import json
import os
import sys

import cv2
import numpy as np

SEED = 7
POINTS = ("toe_px", "heel_px", "land_toe_px", "land_heel_px")


def moved(truth, move):
    truth = copy.deepcopy(truth)
    for joint in truth["joints"]:
        for name in POINTS:
            if name in joint:
                joint[name] = move(joint[name])
        if "foot_px" in joint:
            joint["foot_px"] = [move(p) for p in joint["foot_px"]]
    return truth


def mirrored(truth, width):
    truth = moved(truth, lambda p: [width - 1 - p[0], p[1]])
    leads = len(truth["joints"])
    for joint in truth["joints"]:
        joint["pin"] = leads + 1 - joint["pin"]
        if "bridge_to" in joint:
            joint["bridge_to"] = leads + 1 - joint["bridge_to"]
    truth["joints"].sort(key=lambda joint: joint["pin"])
    truth["towards_body_px"][0] *= -1
    return truth


def shrunk(truth, factor):
    truth = moved(truth, lambda p: [(p[0] + 0.5) * factor - 0.5, (p[1] + 0.5) * factor - 0.5])
    truth["edge_blur_px"] *= factor
    return truth


def pitch_px(truth):
    joints = truth["joints"]
    span = np.subtract(joints[0]["land_toe_px"], joints[-1]["land_toe_px"])
    return float(np.hypot(*span)) / (len(joints) - 1)


def varied(truth, picture, pitch, rng):
    if rng.random() < 0.5 and pitch > 26:
        factor = max(rng.uniform(20 / pitch, 1), 0.4)
        picture = cv2.resize(picture, None, fx=factor, fy=factor, interpolation=cv2.INTER_AREA)
        truth = shrunk(truth, factor)
    if rng.random() < 0.4:
        picture = cv2.GaussianBlur(picture, (0, 0), rng.uniform(0.4, max(0.5, 0.035 * pitch)))
    picture = 255 * (np.clip(picture, 0, 255) / 255) ** rng.uniform(0.6, 1.6)
    picture *= rng.uniform(0.7, 1.15) * rng.uniform(0.9, 1.1, 3)
    picture += rng.normal(0, rng.uniform(0, 4), picture.shape)
    if rng.random() < 0.3:
        slope = np.linspace(-1, 1, picture.shape[1]) * rng.uniform(-0.25, 0.25)
        picture *= (1 + slope)[None, :, None]
    return truth, picture


def main():
    source, target, variants = sys.argv[1], sys.argv[2], int(sys.argv[3])
    seed = int(sys.argv[4]) if len(sys.argv) > 4 else SEED
    first = int(sys.argv[5]) if len(sys.argv) > 5 else 0
    os.makedirs(target, exist_ok=True)
    rng = np.random.default_rng(seed)
    for file in sorted(glob.glob(os.path.join(source, "*.truth.json"))):
        with open(file, encoding="utf-8") as stream:
            original = json.load(stream)
        photo = cv2.imread(os.path.join(source, original["photo"])).astype(np.float32)
        pitch = pitch_px(original)
        for number in range(first, first + variants):
            truth, picture = copy.deepcopy(original), photo
            if number % 2 == 1:
                picture = picture[:, ::-1].copy()
                truth = mirrored(truth, picture.shape[1])
            if number > 0:
                truth, picture = varied(truth, picture, pitch, rng)
            name = f"{os.path.splitext(original['photo'])[0]}-v{number}"
            truth["photo"] = name + ".jpg"
            cv2.imwrite(os.path.join(target, truth["photo"]),
                        np.clip(picture, 0, 255).astype(np.uint8),
                        [cv2.IMWRITE_JPEG_QUALITY, int(rng.integers(60, 95))])
            with open(os.path.join(target, name + ".truth.json"), "w", encoding="utf-8") as stream:
                json.dump(truth, stream)


if __name__ == "__main__":
    main()
