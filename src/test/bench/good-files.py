#!/usr/bin/env python3
"""Writes whole JPEG files of many kinds, to count how many of them are called damaged.

    src/test/bench/good-files.py OUT PICTURES [COUNT] [SEED]
    mvn test -Dtest=DamageBenchmark -Ddamage.good=OUT

Pieces of the JPEGs below PICTURES, edited as people do (scale bar, caption, border, brighter part,
two side by side, turned), each saved as one kind. Kinds in HELD_OUT are by encoders that no
threshold of models/photo/limits.json was set by. Needs Pillow, OpenCV, cjpeg and jpegtran; gm,
ffmpeg, ImageMagick and Node with the packages sharp and jpeg-js (NODE_PATH) where
they are; a kind whose program is missing is left out with a word.
"""
import io
import json
import os
import pathlib
import random
import shutil
import subprocess
import sys

import cv2
import numpy as np
from PIL import Image, ImageDraw, ImageEnhance

HELD_OUT = {"gm", "ffmpeg", "mozjpeg-sharp", "jpeg-js", "cv2-split-quality"}
NODE = r"""
const fs = require('fs');
const jobs = JSON.parse(fs.readFileSync(process.argv[1]));
(async () => {
  let sharp, js;
  try { sharp = require('sharp'); } catch (e) {}
  try { js = require('jpeg-js'); } catch (e) {}
  for (const job of jobs) {
    const size = {width: job.width, height: job.height};
    if (job.kind === 'mozjpeg-sharp' && sharp) {
      await sharp(fs.readFileSync(job.raw), {raw: {...size, channels: 3}}).jpeg({mozjpeg: true, quality: job.quality,
        chromaSubsampling: job.quality % 2 ? '4:4:4' : '4:2:0'}).toFile(job.out);
    } else if (job.kind === 'jpeg-js' && js) {
      const rgb = fs.readFileSync(job.raw), data = Buffer.alloc(size.width * size.height * 4, 255);
      for (let i = 0, j = 0; i < rgb.length; i += 3, j += 4) rgb.copy(data, j, i, i + 3);
      fs.writeFileSync(job.out, js.encode({...size, data}, job.quality).data);
    }
    fs.unlinkSync(job.raw);
  }
})();
"""


def edited(picture, dice):
    draw = ImageDraw.Draw(picture)
    w, h = picture.size
    what = dice.randrange(10)
    if what == 0:
        draw.rectangle([w // 2, h - 14, w - 8, h - 10], fill="white")
        draw.text((w // 2, h - 28), "500 um", fill="white")
    elif what == 1:
        draw.rectangle([0, 0, w, 18], fill="black")
        draw.text((4, 4), "board 12 after rework 2026-03-01", fill="white")
    elif what == 2:
        draw.rectangle([0, 0, w - 1, h - 1], outline="black", width=dice.randint(1, 12))
    elif what == 3:
        at = dice.randint(1, h - 2)
        part = picture.crop((0, at, w, h))
        picture.paste(ImageEnhance.Brightness(part).enhance(dice.uniform(0.6, 1.6)), (0, at))
    elif what == 4:
        other = picture.transpose(Image.FLIP_TOP_BOTTOM).crop((0, 0, w // 2, h))
        picture.paste(other, (0, 0))
    elif what == 5:
        picture = picture.rotate(dice.uniform(-20, 20), expand=False, fillcolor="white")
    elif what == 6:
        picture = ImageEnhance.Contrast(picture).enhance(dice.uniform(0.4, 3))
    return picture


def exif(dice):
    block = Image.Exif()
    block[0x0112] = dice.randint(1, 8)
    block[0x010F] = "a maker"
    block[0x0132] = "2026:03:01 12:00:00"
    return block.tobytes()


def pil(picture, **how):
    out = io.BytesIO()
    picture.save(out, "JPEG", **how)
    return out.getvalue()


def piped(command, data):
    return subprocess.run(command, input=data, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                          check=True).stdout


def ppm(picture):
    out = io.BytesIO()
    picture.save(out, "PPM")
    return out.getvalue()


def kinds(dice):
    """Name to what makes the bytes of a picture; None where the program is missing."""
    def q(low=30, high=100):
        return dice.randint(low, high)

    def cjpeg(*how):
        return lambda p: piped(["cjpeg", "-quality", str(q()), *how], ppm(p))

    def tran(*how):
        return lambda p: piped(["jpegtran", *how], pil(p, quality=q(), subsampling=q(0, 2)))

    def other(program, *how):
        name = shutil.which(program)
        return (lambda p: piped([name, *how], ppm(p))) if name else None

    def opencv(*how):
        def make(p):
            bgr = np.ascontiguousarray(np.array(p)[:, :, ::-1])
            return cv2.imencode(".jpg", bgr, list(how))[1].tobytes()
        return make

    def phone(p):
        small = pil(p.resize((160, 120)), quality=70)
        return (pil(p, quality=q(85, 97), subsampling=2, exif=exif(dice))
                + bytes(dice.randint(0, 64)) + small)

    def filled_up(p):
        whole = pil(p, quality=q(80, 97), subsampling=1, exif=exif(dice))
        return whole[:-2] + bytes(dice.randint(0, 700)) + whole[-2:]

    def saved_twice(p):
        return pil(Image.open(io.BytesIO(pil(p, quality=q()))), quality=q())

    def split(p):
        how = (cv2.IMWRITE_JPEG_LUMA_QUALITY, q(), cv2.IMWRITE_JPEG_CHROMA_QUALITY, q(),
               cv2.IMWRITE_JPEG_OPTIMIZE, 1)
        return opencv(*how)(p)

    return {
        "editor-420": lambda p: pil(p, quality=q(), subsampling=2),
        "editor-progressive-444": lambda p: pil(p, quality=q(), subsampling=0, progressive=True),
        "editor-grey": lambda p: pil(p.convert("L"), quality=q()),
        "editor-saved-twice": saved_twice,
        "phone": phone,
        "camera-filled-up": filled_up,
        "microscope-restart": opencv(cv2.IMWRITE_JPEG_QUALITY, q(), cv2.IMWRITE_JPEG_RST_INTERVAL,
                                     dice.choice([1, 4, 16, 64])),
        "camera-fast-422": cjpeg("-dct", "fast", "-sample", "2x1"),
        "camera-440": cjpeg("-sample", "1x2", "-restart", str(q(1, 4))),
        "camera-411": cjpeg("-sample", "4x1", "-optimize"),
        "microscope-rgb": cjpeg("-rgb"),
        "camera-410": cjpeg("-sample", "4x2", "-dct", "float"),
        "turned-losslessly": tran("-rotate", "90", "-trim", "-copy", "all"),
        "one-colour-a-scan-restart": tran("-restart", "3", "-progressive"),
        "imagemagick": other("convert-im6", "ppm:-", "-quality", str(q()), "-interlace",
                             dice.choice(["none", "JPEG"]), "jpg:-"),
        "gm": other("gm", "convert", "ppm:-", "-quality", str(q()), "jpg:-"),
        "ffmpeg": other("ffmpeg", "-loglevel", "quiet", "-f", "image2pipe", "-c:v", "ppm", "-i",
                        "-", "-pix_fmt", dice.choice(["yuvj420p", "yuvj422p", "yuvj444p"]),
                        "-q:v", str(q(1, 20)), "-f", "mjpeg", "-"),
        "cv2-split-quality": split,
        "mozjpeg-sharp": "node",
        "jpeg-js": "node",
    }


def piece(files, dice):
    picture = Image.open(dice.choice(files)).convert("RGB")
    w, h = (min(side, dice.randint(64, 480)) for side in picture.size)
    x, y = dice.randint(0, picture.width - w), dice.randint(0, picture.height - h)
    return edited(picture.crop((x, y, x + w, y + h)), dice)


def main(out, pictures, count=5000, seed=1):
    out.mkdir(parents=True)
    dice = random.Random(seed)
    files = sorted(pictures.rglob("*.jpg"))
    made, node = {}, []
    for i in range(count):
        all_kinds = kinds(dice)
        kind = sorted(all_kinds)[i % len(all_kinds)]
        make = all_kinds[kind]
        picture = piece(files, dice)
        name = out / f"{i:05}-{'held-out' if kind in HELD_OUT else 'known'}-{kind}.jpg"
        if make == "node":
            raw = name.with_suffix(".raw")
            raw.write_bytes(picture.tobytes())
            node.append({"kind": kind, "raw": str(raw), "out": str(name), "width": picture.width,
                         "height": picture.height, "quality": dice.randint(30, 100)})
        elif make:
            name.write_bytes(make(picture))
        made[kind] = made.get(kind, 0) + (make is not None)
    jobs = out / "jobs.json"
    jobs.write_text(json.dumps(node))
    if shutil.which("node"):
        subprocess.run(["node", "-e", NODE, str(jobs)], check=True, env=os.environ)
    jobs.unlink()
    for left in out.glob("*.raw"):
        left.unlink()
    print(len(list(out.glob("*.jpg"))), "files;", made)


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]), *map(int, sys.argv[3:]))
