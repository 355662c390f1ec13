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
EMBEDDING = 96


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
    """Planes of a joint to one score a question (log odds), and behind them what it makes of the
    joint before it answers (the embedding), for whoever learns from few joints.

    The last question, photographed, has eyes of its own that see texture but not where it lies, so
    that telling photographs apart is nothing that the eyes for faults could learn from it. It sees
    the joint alone; what is beside it, if anything, is for the faults.
    """

    def __init__(self):
        super().__init__()
        self.see = nn.Sequential(
            nn.Conv2d(3, 28, 4, 2, 1, bias=False), nn.BatchNorm2d(28), nn.ReLU(),  # 68 x 32
            block(28, 56, 2), Residual(56),  # 34 x 16
            block(56, 104, 2), Residual(104),  # 17 x 8
            block(104, 144, 2), Residual(144))  # 9 x 4
        self.narrow = nn.Sequential(nn.Conv2d(144, 40, 1), nn.ReLU())
        self.think = nn.Sequential(nn.Flatten(), nn.Dropout(0.3),
                                   nn.Linear(40 * 9 * 4, EMBEDDING), nn.ReLU())
        self.answer = nn.Sequential(nn.Dropout(0.2), nn.Linear(EMBEDDING, LOOK))
        self.look = nn.Sequential(
            nn.Conv2d(3, 12, 4, 2, 1, bias=False), nn.BatchNorm2d(12), nn.ReLU(),
            block(12, 24, 2), block(24, 32, 2), nn.AvgPool2d((17, 8)), nn.Flatten(),
            nn.Dropout(0.2), nn.Linear(32, 1))

    def forward(self, x):
        own = x[:, :3]  # of six planes that the program shows
        thought = self.think(self.narrow(self.see(own)))
        return torch.cat([self.answer(thought), self.look(own), thought], 1)


class RowReader(nn.Module):
    """A joint's embedding, the mean of its row's and their spread, to a score a question.

    Rows bad throughout are among those that it learns from, so that being like its row proves
    nothing by itself; what nineteen joints show together of the lamp, and of solder, counts.
    """

    def __init__(self):
        super().__init__()
        self.think = nn.Sequential(nn.Linear(3 * EMBEDDING, 128), nn.ReLU(), nn.Dropout(0.2),
                                   nn.Linear(128, LOOK))

    def forward(self, x):
        return self.think(x)


def in_row(own):
    """What a RowReader is shown, of embeddings rows x joints x EMBEDDING."""
    mean = own.mean(1, keepdim=True)
    spread = ((own - mean) ** 2).mean(1, keepdim=True).add(1e-6).sqrt()
    return torch.cat([own, mean.expand_as(own), spread.expand_as(own)], 2).flatten(0, 1)


def scaled(bytes_):
    """As NetworkReader does in Java."""
    return (bytes_.float() - 128) / 64


def blurred(x, sigma):
    """Blurred with a Gaussian of sigma pixels."""
    far, planes = int(3 * sigma) + 1, x.shape[1]
    reach = torch.arange(-far, far + 1, device=x.device)
    weight = torch.exp(-0.5 * (reach / sigma) ** 2)
    weight = (weight / weight.sum()).view(1, 1, 1, -1).repeat(planes, 1, 1, 1)
    x = F.conv2d(F.pad(x, (far, far, 0, 0), mode="replicate"), weight, groups=planes)
    return F.conv2d(F.pad(x, (0, 0, far, far), mode="replicate"), weight.transpose(2, 3),
                    groups=planes)


class Show:
    """Varies pictures as cameras and lamps do, and makes strange ones; all on the GPU."""

    def __init__(self, generator, joints):
        self.generator = generator
        self.device = generator.device
        self.joints = joints  # of a row, which lie one after the other and share lamp and camera

    def rand(self, *size):
        return torch.rand(size, generator=self.generator, device=self.device)

    def by_row(self, low, high, n, *size):
        """As between, alike for the joints of a row."""
        rows = self.between(low, high, n // self.joints, *size)
        return rows.repeat_interleave(self.joints, 0)

    def between(self, low, high, *size):
        return low + (high - low) * self.rand(*size)

    def chosen(self, share, n):
        return (self.rand(n) < share).view(-1, 1, 1, 1)

    def warped(self, x):
        """A little larger, smaller, turned and displaced: places found are not exact."""
        n = len(x)
        angle, zoom = self.by_row(-0.04, 0.04, n), self.by_row(0.93, 1.07, n)
        dx, dy = self.between(-0.09, 0.09, n), self.between(-0.05, 0.05, n)
        ratio = HEIGHT / WIDTH
        theta = torch.stack([
            torch.stack([zoom * angle.cos(), -zoom * angle.sin() * ratio, dx], -1),
            torch.stack([zoom * angle.sin() / ratio, zoom * angle.cos(), dy], -1)], 1)
        grid = F.affine_grid(theta, x.shape, align_corners=False)
        return F.grid_sample(x, grid, padding_mode="border", align_corners=False)

    def lit(self, x):
        """Other gain, gamma, tint and colour strength, the same for the joint and its row."""
        n = len(x)
        light, colour = x.view(n, -1, 3, HEIGHT, WIDTH).split([1, 2], 2)
        share = ((light * 64 + 64) / 128).clamp(0, 1.5) + 1e-3
        gamma = self.by_row(0.7, 1.45, n, 1, 1, 1, 1)
        light = (share ** gamma * 128 - 64) / 64
        light = light * self.by_row(0.85, 1.15, n, 1, 1, 1, 1) + self.by_row(
            -0.15, 0.15, n, 1, 1, 1, 1)
        strength = self.by_row(0.4, 1.5, n, 1, 1, 1, 1) * (self.by_row(0, 1, n, 1, 1, 1, 1) > 0.08)
        turn = self.by_row(-0.3, 0.3, n, 1, 1, 1, 1)
        a, b = colour[:, :, :1], colour[:, :, 1:]
        colour = strength * torch.cat([a * turn.cos() - b * turn.sin(),
                                       a * turn.sin() + b * turn.cos()], 2)
        colour = colour + self.by_row(-0.15, 0.15, n, 1, 2, 1, 1)
        return torch.cat([light, colour], 2).view(n, -1, HEIGHT, WIDTH)

    def shaded(self, x):
        """Light that falls unevenly over the picture, the same on both."""
        n = len(x)
        field = torch.randn((n, 1, 3, 2), generator=self.generator, device=self.device)
        field = F.interpolate(field, size=(HEIGHT, WIDTH), mode="bilinear", align_corners=True)
        much = self.by_row(0, 0.3, n, 1, 1, 1) * (self.by_row(0, 1, n, 1, 1, 1) < 0.5)
        gain = 1 + much * field.clamp(-1.5, 1.5)
        light, colour = x.view(n, -1, 3, HEIGHT, WIDTH).split([1, 2], 2)
        light = (light + 1) * gain.unsqueeze(1) - 1
        return torch.cat([light, colour], 2).view(n, -1, HEIGHT, WIDTH)

    def taken(self, x):
        """Coarser, softer, sharpened, noisy."""
        n = len(x)
        part = n // 4
        factor = float(self.between(0.35, 0.9, 1))
        small = F.interpolate(x[:part], scale_factor=factor, mode="area")
        coarse = F.interpolate(small, size=(HEIGHT, WIDTH), mode="bilinear")
        two = x[part:2 * part]
        soft = blurred(two, float(self.between(0.4, 1.8, 1)))
        keen = two + float(self.between(0.3, 1.2, 1)) * (two - soft)
        use_keen = self.chosen(0.4, part).float()
        x = torch.cat([coarse, use_keen * keen + (1 - use_keen) * soft, x[2 * part:]])
        noise = self.by_row(0, 0.14, n, 1, 1, 1) * (self.by_row(0, 1, n, 1, 1, 1) < 0.6)
        grain = torch.randn(x.shape, generator=self.generator, device=self.device)
        grain[:, 3:] *= 0.4  # of a typical joint, which is a median
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
        tiles = x[4 * k:5 * k].unfold(2, 34, 34).unfold(3, 16, 16)  # k planes 4 4 34 16
        order = torch.randperm(16, generator=self.generator, device=self.device)
        tiles = tiles.reshape(k, -1, 16, 34, 16)[:, :, order].reshape(k, -1, 4, 4, 34, 16)
        parts.append(tiles.permute(0, 1, 2, 4, 3, 5).reshape(k, -1, HEIGHT, WIDTH))
        rest = k
        size = int(torch.randint(2, 20, (1,), generator=self.generator, device=self.device))
        cloud = torch.randn((rest, x.shape[1], size, size), generator=self.generator,
                            device=self.device)
        cloud = F.interpolate(cloud, size=(HEIGHT, WIDTH), mode="bilinear")
        cloud.view(rest, -1, 3, HEIGHT, WIDTH)[:, :, 1:] *= 0.3
        same = self.chosen(0.5, rest).float()
        if x.shape[1] > 3:
            cloud[:, 3:] = same * cloud[:, :3] + (1 - same) * cloud[:, 3:]
        parts.append(cloud * self.between(0.2, 1.2, rest, 1, 1, 1))
        return torch.cat(parts)


def bridged(x, show):
    """Metal across the gap behind each joint, of the joint's own texture; the gap as it is where
    the second value is false."""
    n = len(x)
    yes = show.chosen(0.5, n)
    middle, half = show.between(62, 112, n, 1, 1, 1), show.between(3, 14, n, 1, 1, 1)
    return torch.where(yes, banded(x, middle, half, 58, show), x), yes.view(-1)


def flooded(x, show):
    """A band of metal over the whole row, of each joint's own texture; rows as they are where the
    second value is false."""
    n = len(x)
    yes = show.by_row(0, 1, n, 1, 1, 1) < 0.5
    middle, half = show.by_row(58, 112, n, 1, 1, 1), show.by_row(5, 30, n, 1, 1, 1)
    band = banded(banded(x, middle, half, 80, show).flip(3), middle, half, 80, show).flip(3)
    return torch.where(yes, band, x), yes.view(-1)


def banded(x, middle, half, to, show):
    """Metal from the joint's right edge to a column, within half of a middle line."""
    n = len(x)
    across = torch.arange(WIDTH, device=x.device).view(1, 1, 1, WIDTH)
    along = torch.arange(HEIGHT, device=x.device).view(1, 1, HEIGHT, 1)
    wave = 2 * (along / show.between(3, 9, n, 1, 1, 1) + 6.3 * show.rand(n, 1, 1, 1)).sin()
    inside = torch.sigmoid((half - (along - middle).abs()) / 0.8)
    gap = torch.sigmoid((across - 39 - wave) / 0.8) * torch.sigmoid((to + wave - across) / 0.8)
    metal = x.roll(16, 3)  # own metal lies round the middle, the gap half a pitch on
    metal = metal * show.between(0.85, 1.05, n, 1, 1, 1)
    return torch.lerp(x, metal, inside * gap)
