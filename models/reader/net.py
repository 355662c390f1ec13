"""The second reader's network and the pictures that it is shown while it learns. Needs PyTorch."""
import torch
from torch import nn
from torch.nn import functional as F

QUESTIONS = ["missing", "unwetted", "open", "excess", "bridge_before", "bridge_after", "unlike",
             "ball", "over_quarter", "over_half", "photographed"]
STRANGE = QUESTIONS.index("unlike")
LOOK = QUESTIONS.index("photographed")
FAULTS = [q for q in QUESTIONS if q not in ("unlike", "photographed")]
MIRRORED = [0, 1, 2, 3, 5, 4, 6, 7, 8, 9, 10]
HEIGHT, WIDTH = 136, 64
PITCH = 32  # pixels a pitch, as in RowPicturesMaker


def block(inputs, outputs, stride):
    return nn.Sequential(nn.Conv2d(inputs, outputs, 3, stride, 1, bias=False),
                         nn.BatchNorm2d(outputs), nn.ReLU())


class Residual(nn.Module):
    def __init__(self, width):
        super().__init__()
        self.first = block(width, width, 1)
        self.second = nn.Sequential(nn.Conv2d(width, width, 3, 1, 1, bias=False),
                                    nn.BatchNorm2d(width))

    def forward(self, x):
        return F.relu(x + self.second(self.first(x)))


class Reader(nn.Module):
    """Planes of a joint to one score a question (log odds).

    The last question, photographed, has eyes of its own that see texture but not where it lies, so
    that telling photographs apart is nothing that the eyes for faults could learn from it. It sees
    the joint alone; what is beside it, if anything, is for the faults.
    """

    def __init__(self, planes):
        super().__init__()
        self.planes = planes
        self.see = nn.Sequential(
            nn.Conv2d(planes, 20, 4, 2, 1, bias=False), nn.BatchNorm2d(20), nn.ReLU(),  # 68 x 32
            block(20, 40, 2), Residual(40),  # 34 x 16
            block(40, 80, 2), Residual(80),  # 17 x 8
            block(80, 112, 2), Residual(112))  # 9 x 4
        self.narrow = nn.Sequential(nn.Conv2d(112, 32, 1), nn.ReLU())
        self.think = nn.Sequential(nn.Flatten(), nn.Dropout(0.3), nn.Linear(32 * 9 * 4, 96),
                                   nn.ReLU(), nn.Dropout(0.2), nn.Linear(96, LOOK))
        self.look = nn.Sequential(
            nn.Conv2d(3, 12, 4, 2, 1, bias=False), nn.BatchNorm2d(12), nn.ReLU(),
            block(12, 24, 2), block(24, 32, 2), nn.AvgPool2d((17, 8)), nn.Flatten(),
            nn.Dropout(0.2), nn.Linear(32, 1))

    def forward(self, x):
        own = x[:, :3]
        seen = own if self.planes == 3 else x
        return torch.cat([self.think(self.narrow(self.see(seen))), self.look(own)], 1)


def scaled(bytes_):
    """As NetworkReader does in Java."""
    return (bytes_.float() - 128) / 64


class Show:
    """Varies pictures as cameras and lamps do, and makes strange ones; all on the GPU."""

    def __init__(self, generator):
        self.generator = generator
        self.device = generator.device

    def rand(self, *size):
        return torch.rand(size, generator=self.generator, device=self.device)

    def between(self, low, high, *size):
        return low + (high - low) * self.rand(*size)

    def chosen(self, share, n):
        return (self.rand(n) < share).view(-1, 1, 1, 1)

    def warped(self, x):
        """A little larger, smaller, turned and displaced: places found are not exact."""
        n = len(x)
        angle, zoom = self.between(-0.04, 0.04, n), self.between(0.93, 1.07, n)
        dx, dy = self.between(-0.09, 0.09, n), self.between(-0.05, 0.05, n)
        ratio = HEIGHT / WIDTH
        theta = torch.stack([
            torch.stack([zoom * angle.cos(), -zoom * angle.sin() * ratio, dx], -1),
            torch.stack([zoom * angle.sin() / ratio, zoom * angle.cos(), dy], -1)], 1)
        grid = F.affine_grid(theta, (n, 6, HEIGHT, WIDTH), align_corners=False)
        return F.grid_sample(x, grid, padding_mode="border", align_corners=False)

    def lit(self, x):
        """Other gain, gamma, tint and colour strength, the same for the joint and its row."""
        n = len(x)
        light, colour = x.view(n, 2, 3, HEIGHT, WIDTH)[:, :, :1], x.view(
            n, 2, 3, HEIGHT, WIDTH)[:, :, 1:]
        share = ((light * 64 + 64) / 128).clamp(0, 1.5) + 1e-3
        gamma = self.between(0.7, 1.45, n, 1, 1, 1, 1)
        light = (share ** gamma * 128 - 64) / 64
        light = light * self.between(0.85, 1.15, n, 1, 1, 1, 1) + self.between(
            -0.15, 0.15, n, 1, 1, 1, 1)
        strength = self.between(0.4, 1.5, n, 1, 1, 1, 1) * (self.rand(n, 1, 1, 1, 1) > 0.08)
        turn = self.between(-0.3, 0.3, n, 1, 1, 1, 1)
        a, b = colour[:, :, :1], colour[:, :, 1:]
        colour = strength * torch.cat([a * turn.cos() - b * turn.sin(),
                                       a * turn.sin() + b * turn.cos()], 2)
        colour = colour + self.between(-0.15, 0.15, n, 1, 2, 1, 1)
        return torch.cat([light, colour], 2).view(n, 6, HEIGHT, WIDTH)

    def shaded(self, x):
        """Light that falls unevenly over the picture, the same on both."""
        n = len(x)
        field = torch.randn((n, 1, 3, 2), generator=self.generator, device=self.device)
        field = F.interpolate(field, size=(HEIGHT, WIDTH), mode="bilinear", align_corners=True)
        much = self.between(0, 0.3, n, 1, 1, 1) * self.chosen(0.5, n)
        gain = 1 + much * field.clamp(-1.5, 1.5)
        light = ((x[:, [0, 3]] + 1) * gain) - 1
        return torch.cat([light[:, :1], x[:, 1:3], light[:, 1:], x[:, 4:]], 1)

    def taken(self, x):
        """Coarser, softer, sharpened, noisy."""
        n = len(x)
        part = n // 4
        factor = float(self.between(0.35, 0.9, 1))
        small = F.interpolate(x[:part], scale_factor=factor, mode="area")
        coarse = F.interpolate(small, size=(HEIGHT, WIDTH), mode="bilinear")
        sigma = float(self.between(0.4, 1.8, 1))
        reach = torch.arange(-4, 5, device=self.device)
        weight = torch.exp(-0.5 * (reach / sigma) ** 2)
        weight = (weight / weight.sum()).view(1, 1, 1, 9).repeat(6, 1, 1, 1)
        two = x[part:2 * part]
        soft = F.conv2d(F.pad(two, (4, 4, 0, 0), mode="replicate"), weight, groups=6)
        soft = F.conv2d(F.pad(soft, (0, 0, 4, 4), mode="replicate"), weight.transpose(2, 3),
                        groups=6)
        keen = two + float(self.between(0.3, 1.2, 1)) * (two - soft)
        use_keen = self.chosen(0.4, part).float()
        x = torch.cat([coarse, use_keen * keen + (1 - use_keen) * soft, x[2 * part:]])
        noise = self.between(0, 0.14, n, 1, 1, 1) * self.chosen(0.6, n)
        grain = torch.randn(x.shape, generator=self.generator, device=self.device)
        grain[:, 3:] *= 0.4
        return x + noise * grain

    def covered(self, x):
        """Something opaque lies over a good part of the joint, not of its row's typical one."""
        n = len(x)
        across = torch.arange(WIDTH, device=self.device).view(1, 1, 1, WIDTH) / WIDTH
        along = torch.arange(HEIGHT, device=self.device).view(1, 1, HEIGHT, 1) / HEIGHT
        tilt = self.between(-0.4, 0.4, n, 1, 1, 1)
        edge = self.between(0.35, 0.85, n, 1, 1, 1)
        above = along + tilt * (across - 0.5) < edge
        band = (along + tilt * (across - 0.5) - edge).abs() < 0.3
        pick = self.chosen(0.5, n)
        where = torch.where(pick, above, band)
        paint = torch.cat([self.between(-1.0, 1.6, n, 1, 1, 1),
                           self.between(-0.8, 0.8, n, 2, 1, 1)], 1)
        rough = torch.randn((n, 1, 17, 8), generator=self.generator, device=self.device)
        rough = F.interpolate(rough, size=(HEIGHT, WIDTH), mode="bilinear")
        own = torch.where(where, paint + rough * self.between(0, 0.25, n, 1, 1, 1), x[:, :3])
        return torch.cat([own, x[:, 3:]], 1)

    def strange(self, x):
        """Not joints of a found row: misplaced, upside down, sideways, wrong scale, covered, other
        things. Rows taken off along the leads or turned come from the photos themselves."""
        n = len(x)
        k = n // 8
        parts = []
        shift = int(torch.randint(11, 22, (1,), generator=self.generator, device=self.device))
        parts.append(torch.roll(x[:k], shift, 3))
        parts.append(x[k:2 * k].flip(2))
        sideways = x[2 * k:3 * k].transpose(2, 3)
        parts.append(F.interpolate(sideways, size=(HEIGHT, WIDTH), mode="bilinear"))
        parts.append(self.covered(x[6 * k:]))
        zoom = x[3 * k:4 * k]
        half = F.interpolate(zoom, size=(HEIGHT // 2, WIDTH // 2), mode="area").repeat(1, 1, 2, 2)
        twice = F.interpolate(zoom[:, :, 34:102, 16:48], size=(HEIGHT, WIDTH), mode="bilinear")
        pick = self.chosen(0.5, k).float()
        parts.append(pick * half + (1 - pick) * twice)
        tiles = x[4 * k:5 * k].unfold(2, 34, 34).unfold(3, 16, 16)  # k 6 4 4 34 16
        order = torch.randperm(16, generator=self.generator, device=self.device)
        tiles = tiles.reshape(k, 6, 16, 34, 16)[:, :, order].reshape(k, 6, 4, 4, 34, 16)
        parts.append(tiles.permute(0, 1, 2, 4, 3, 5).reshape(k, 6, HEIGHT, WIDTH))
        rest = k
        size = int(torch.randint(2, 20, (1,), generator=self.generator, device=self.device))
        cloud = torch.randn((rest, 6, size, size), generator=self.generator, device=self.device)
        cloud = F.interpolate(cloud, size=(HEIGHT, WIDTH), mode="bilinear")
        cloud[:, [1, 2, 4, 5]] *= 0.3
        same = self.chosen(0.5, rest).float()
        cloud[:, 3:] = same * cloud[:, :3] + (1 - same) * cloud[:, 3:]
        parts.append(cloud * self.between(0.2, 1.2, rest, 1, 1, 1))
        return torch.cat(parts)
