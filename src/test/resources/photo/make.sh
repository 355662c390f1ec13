#!/bin/sh
# Makes the test pictures of this folder. Needs ImageMagick 6.9, exiftool 12.57 and Pillow 9.4.
set -eu
cd "$(dirname "$0")"
rm -f ./*.png ./*.jpg ./*.tif ./*.bmp ./*.webp ./*.gif

# 48 x 32, different in every corner and direction, smooth enough for JPEG.
convert -size 48x32 gradient:'#2040c0-#c06020' \
  \( -size 32x48 gradient:'#e0e0e0-#101010' -rotate 90 \) -average \
  -fill '#30a030' -draw 'rectangle 0,0 15,7' -fill '#e0e0e0' -draw 'rectangle 40,24 47,31' \
  -depth 8 -strip -define png:exclude-chunks=all base.png

for n in 1 2 3 4 5 6 7 8; do
  convert base.png -quality 95 -sampling-factor 4:4:4 "orientation-$n.jpg"
  convert base.png -compress LZW "orientation-$n.tif"
  exiftool -q -overwrite_original -n -IFD0:Orientation="$n" "orientation-$n.jpg" "orientation-$n.tif"
  # The outside reference for the pixels.
  convert "orientation-$n.tif" -auto-orient -strip -define png:exclude-chunks=all "upright-$n.png"
done
cp base.png orientation-6.png
convert base.png -define webp:lossless=true orientation-6.webp
exiftool -q -overwrite_original -n -IFD0:Orientation=6 orientation-6.png orientation-6.webp

time() { cp orientation-1.jpg "$1"; shift; exiftool -q -overwrite_original "$@"; }
time time-offset.jpg -DateTimeOriginal='2026:03:01 09:05:07' -SubSecTimeOriginal=042 \
  -OffsetTimeOriginal='+05:30' time-offset.jpg
time time-local.jpg -DateTimeOriginal='2026:03:01 09:05:00' time-local.jpg
time time-unknown.jpg -n -DateTimeOriginal='0000:00:00 00:00:00' -OffsetTimeOriginal='   :  ' \
  time-unknown.jpg
# Only the time of the file's last change, which is no capture time.
time time-changed-only.jpg -ModifyDate='2026:03:02 10:00:00' time-changed-only.jpg

convert base.png -quality 95 -interlace JPEG progressive.jpg
convert base.png -colorspace Gray -quality 95 grey.jpg
convert base.png -colorspace CMYK -quality 95 cmyk.jpg
convert base.png +dither -colors 256 -define png:color-type=3 palette.png
convert base.png BMP3:base.bmp
convert base.png -define webp:lossless=true lossless.webp
convert base.png -quality 95 lossy.webp
convert base.png -colorspace CMYK cmyk.tif
convert base.png base.png -compress LZW two-pages.tif
convert base.png -define quantum:format=floating-point -depth 32 float.tif
convert base.png \( base.png -flop \) -loop 0 moving.gif

"${PYTHON:-python3}" - <<'PYTHON'
import struct, zlib
from PIL import Image
base = Image.open("base.png").convert("RGB")
frames = [base, base.transpose(Image.FLIP_LEFT_RIGHT)]
frames[0].save("moving.png", save_all=True, append_images=frames[1:], duration=100)
frames[0].save("moving.webp", save_all=True, append_images=frames[1:], duration=100, lossless=True)
rgba = base.copy(); rgba.putalpha(Image.linear_gradient("L").resize(base.size)); rgba.save("alpha.png")

def chunk(kind, body):
    return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))

def png16(name, scale):  # value = 257 v, or 16 v for a 12-bit camera
    rows = b"".join(b"\0" + b"".join(struct.pack(">HHH", *(int(c * scale) for c in base.getpixel((x, y))))
                    for x in range(48)) for y in range(32))
    open(name, "wb").write(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", struct.pack(">IIBBBBB", 48, 32, 16, 2, 0, 0, 0))
                           + chunk(b"IDAT", zlib.compress(rows)) + chunk(b"IEND", b""))
png16("sixteen-bits.png", 257)
png16("twelve-of-sixteen-bits.png", 4095 / 255)
PYTHON
convert sixteen-bits.png -depth 16 -compress LZW sixteen-bits.tif
